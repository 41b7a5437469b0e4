/**
 * Reads a place in a video, `4:32` or `1:04:32`, as seconds from its start; undefined when it is neither.
 */
export function parseMoment(text: string): number | undefined {
  const match = /^(?:(\d{1,3}):)?(\d{1,2}):([0-5]\d)$/.exec(text);
  if (!match) return undefined;
  const [, hours, minutes, seconds] = match;
  if (hours !== undefined && Number(minutes) > 59) return undefined;

  return Number(hours ?? 0) * 3600 + Number(minutes) * 60 + Number(seconds);
}

/** Seconds from the start as they are typed: `4:32`, and with hours only where there are some. */
export function showMoment(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  return hours > 0
    ? `${hours}:${two(minutes)}:${two(seconds % 60)}`
    : `${minutes}:${two(seconds % 60)}`;
}

/**
 * The address of a moment: the site's template with the video's address and the seconds put in.
 * The default template is a Media Fragment (W3C Media Fragments URI 1.0 §4.2.1), `#t=272`.
 */
export function momentAddress(template: string, address: string, seconds: number): string {
  return template.replaceAll('{address}', () => address).replaceAll('{seconds}', String(seconds));
}

/** Working time in whole minutes. */
export type Minutes = number;

/**
 * Reads a length of work as whole minutes: `2:30` (hours and minutes), `2.5`, `2.5 h` or `150 min`.
 * Undefined when it is none of these, or not a whole number of minutes.
 */
export function parseDuration(text: string): Minutes | undefined {
  const clock = /^(\d{1,6}):([0-5]\d)$/.exec(text);
  if (clock) return Number(clock[1]) * 60 + Number(clock[2]);

  const minutes = /^(\d{1,8}) ?min$/.exec(text);
  if (minutes) return Number(minutes[1]);

  const hours = /^(\d{1,6})(?:\.(\d{1,4}))? ?h?$/.exec(text);
  if (!hours) return undefined;
  const fraction = hours[2] ?? '';
  const numerator = Number(fraction || '0') * 60;
  const denominator = 10 ** fraction.length;
  return numerator % denominator === 0
    ? Number(hours[1]) * 60 + numerator / denominator
    : undefined;
}

/** Minutes as `2:30`; hours are not cut at a day, so a phase can show `141:45`. */
export function showDuration(minutes: Minutes): string {
  const sign = minutes < 0 ? '−' : '';
  const size = Math.abs(minutes);
  return `${sign}${Math.floor(size / 60)}:${String(size % 60).padStart(2, '0')}`;
}

/** Minutes as an ISO 8601 duration, for `<time datetime>`: `PT2H30M`. */
export function isoDuration(minutes: Minutes): string {
  return `PT${Math.floor(minutes / 60)}H${minutes % 60}M`;
}

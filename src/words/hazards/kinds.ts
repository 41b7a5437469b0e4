/** Dangers of a workshop that the words of a text can tell of. */
export const hazardKinds = [
  'fuel',
  'lifting',
  'welding',
  'blasting',
  'spray',
  'brakes',
  'springs',
  'asbestos',
  'lead',
  'high-voltage',
] as const;

export type HazardKind = (typeof hazardKinds)[number];

/** For each danger the pattern of its words, whole words only, in one language. */
export type HazardWords = Readonly<Record<HazardKind, RegExp>>;

/** A pattern of whole words; letters beyond ASCII are letters too, which `\b` does not know. */
export function wholeWords(...words: readonly string[]): RegExp {
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${words.join('|')})(?![\\p{L}\\p{N}])`, 'iu');
}

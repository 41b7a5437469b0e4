/** A hint with a capital, to stand after a full stop. */
export function asSentence(hint: string | undefined): string | undefined {
  return hint && hint.charAt(0).toUpperCase() + hint.slice(1);
}

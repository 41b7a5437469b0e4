/** Words of a pair that differ in one letter mean different things when they are short: `lh` and `rh`, `seat` and `seal`. */
const LETTERS_TO_ADD = 4;
const LETTERS_TO_REPLACE = 6;

/**
 * The one known word that differs from a typed one by a single slip of the hand: capitals, a hyphen, two letters changed round, a letter
 * more or less, a wrong letter in a long word. Undefined where a second one is as near, or where digits differ: `c-104` is not `c-105`.
 */
export function oneSlipFrom(typed: string, known: Iterable<string>): string | undefined {
  const near = [...known].filter((word) => isOneSlip(typed, word));
  return near.length === 1 ? near[0] : undefined;
}

function isOneSlip(typed: string, word: string): boolean {
  const [a, b] = [fold(typed), fold(word)];
  if (digitsOf(a) !== digitsOf(b)) return false;
  if (a.replaceAll('-', '') === b.replaceAll('-', '')) return true;
  const [typedWords, words] = [a.split('-'), b.split('-')];
  if (typedWords.length !== words.length) return false;
  const pairs = typedWords.map((part, index) => [part, words[index] ?? ''] as const);
  const different = pairs.filter(([one, other]) => one !== other);
  const [pair] = different;
  return different.length === 1 && pair !== undefined && slipped(...pair);
}

const fold = (word: string) =>
  word
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\s_]+/g, '-');

const digitsOf = (word: string) => word.replace(/\D+/g, ' ').trim();

function slipped(typed: string, word: string): boolean {
  let start = 0;
  while (start < typed.length && typed[start] === word[start]) start++;
  const [restTyped, restWord] = [typed.slice(start), word.slice(start)];
  const length = Math.min(typed.length, word.length);
  if (restTyped.length === restWord.length) {
    const [a, b] = restTyped;
    if (restTyped.slice(2) === restWord.slice(2) && `${b}${a}` === restWord.slice(0, 2))
      return length >= LETTERS_TO_ADD;
    return restTyped.slice(1) === restWord.slice(1) && length >= LETTERS_TO_REPLACE;
  }
  const added = restTyped.slice(1) === restWord || restTyped === restWord.slice(1);
  return added && length >= LETTERS_TO_ADD;
}

/** A piece of a sentence: its own text, or the name of the slot that stands there. */
export type Piece = { readonly text: string } | { readonly slot: string };

/** Splits a sentence at its `{names}`, so that elements can stand in it in the order its language wants. */
export function piecesOf(sentence: string): Piece[] {
  return sentence
    .split(/\{([a-z][a-zA-Z0-9]*)\}/)
    .map((piece, index) => (index % 2 === 0 ? { text: piece } : { slot: piece }))
    .filter((piece) => !('text' in piece && piece.text === ''));
}

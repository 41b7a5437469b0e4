import type { KeyObject } from 'node:crypto';
import { type Mark, markText } from './mark.ts';
import { type SignatureFailure, signNote, verifyNote } from './note.ts';
import type { NoteKey } from './note-key.ts';
import type { Verified } from './proof.ts';

/** The mark with one more signature, by an Ed25519 key that goes by the mark's origin, as C2SP tlog-checkpoint advises. */
export function signMark(mark: Mark, privateKey: KeyObject): Mark {
  const signature = signNote(markText(mark), mark.origin, privateKey);
  return { ...mark, signatures: [...mark.signatures, signature] };
}

/** Whether a mark is signed by a key. */
export function verifyMark(mark: Mark, key: NoteKey): Verified<SignatureFailure> {
  return verifyNote(markText(mark), mark.signatures, key);
}

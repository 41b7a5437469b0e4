import type { ListKind, RecordOf } from '../model/kinds.ts';
import type { Understood } from './understand.ts';

/** The records of a project by kind. */
export type Lists = { readonly [Kind in ListKind]: readonly Understood<RecordOf<Kind>>[] };

import { suggest } from '../read/nearest.ts';
import { asSentence } from './as-sentence.ts';

/** That there is no project of a name, and which one may have been meant. */
export function noProject(id: string, ids: readonly string[]): string {
  return `There is no project "${id}". ${asSentence(suggest(id, ids)) ?? ''}`.trimEnd();
}

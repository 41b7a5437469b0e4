import { readImported, writeImported } from './imported-list.ts';

/**
 * Takes rows back, and with them what the list says of the lines they came from, so that these can be imported again. The lines are
 * pending meanwhile: whenever this breaks off, the next import can see by the ledger how it ended.
 */
export async function takeBackLines<Result>(
  projectDir: string,
  ids: ReadonlySet<string>,
  takeBack: () => Promise<Result>,
  taken: (result: Result) => boolean,
): Promise<Result> {
  const imported = await readImported(projectDir);
  const lines = [...imported];
  if (!lines.some(([, { id }]) => ids.has(id))) return takeBack();
  const pending = lines.map(([key, { id, ...rest }]) => {
    const one = ids.has(id) ? { id, pending: true } : { id, ...rest };
    return [key, one] as const;
  });
  await writeImported(projectDir, new Map(pending));
  const result = await takeBack();
  const rest = taken(result) ? lines.filter(([, { id }]) => !ids.has(id)) : lines;
  await writeImported(projectDir, new Map(rest));
  return result;
}

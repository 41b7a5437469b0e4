import { existsSync } from 'node:fs';
import { unlink } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../read/problem.ts';
import { growRow } from '../write/grow-row.ts';
import { keepFile, type WriteResult, writeRows } from '../write/write-rows.ts';
import type { FileToKeep, Ledger, Wrote } from './ledger.ts';

/** The ledger of a content folder, written as any other program of the house writes it. */
export function ledgerIn(contentDir: string, now: () => Date): Ledger {
  const pathOf = ({ project, folder, name }: FileToKeep) => join(contentDir, project, folder, name);
  return {
    write: async ({ project, row, key, phone }) => {
      const options = { now: now(), by: `bench page, ${phone}`, key };
      const { kind, fields, grows } = row;
      return ended(
        await (grows
          ? growRow(contentDir, project, { kind, fields }, options)
          : writeRows(contentDir, project, [{ kind, fields }], options)),
      );
    },
    keep: async (file, bytes) => {
      // No folder is made for a project that is not there; its row will be refused.
      if (!existsSync(join(contentDir, file.project, 'project.yaml'))) return;
      // The name holds the picture's own id: what lies there already is this very picture, kept before a crash.
      if (existsSync(pathOf(file))) return;
      await keepFile(contentDir, file.project, file.folder, file.name, bytes);
    },
    drop: async (file) => unlink(pathOf(file)).catch(() => {}),
  };
}

function ended(result: WriteResult): Wrote {
  if ('written' in result)
    return { stands: result.written.map(({ file, line, id }) => ({ file, line, id })) };
  return isBusy(result.problems) ? { busy: true } : { problems: result.problems };
}

const isBusy = (problems: readonly Problem[]) => problems.some(({ code }) => code === 'write/busy');

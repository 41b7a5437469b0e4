import { readFile } from 'node:fs/promises';

/** When a process started: which start of the machine, and when since then; nothing where the system does not tell. */
export async function startOf(pid: number): Promise<string> {
  return startIn(await told(pid));
}

/** After the next start of the machine a number may come again at the very same moment. */
async function startIn(fields: readonly string[]): Promise<string> {
  const boot = await readFile('/proc/sys/kernel/random/boot_id', 'utf8').catch(() => '');
  return fields[19] === undefined ? '' : `${boot.trim()} ${fields[19]}`.trim();
}

/** What the system tells of a process, from the third field on. */
async function told(pid: number): Promise<string[]> {
  const text = await readFile(`/proc/${pid}/stat`, 'utf8').catch(() => '');
  // The name of the program, in brackets, may hold anything.
  return text.slice(text.lastIndexOf(')') + 2).split(' ');
}

/** Whether the process that left its number is still the one that runs under it. Of one on another machine nothing is known, so it counts as alive. */
export async function isAlive(
  { pid, host, started }: { readonly pid: number; readonly host: string; readonly started: string },
  here: string,
): Promise<boolean> {
  if (host !== here) return true;
  try {
    process.kill(pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ESRCH') return false;
  }
  const fields = await told(pid);
  // One that has ended keeps its number until somebody asks how it ended.
  if (fields[0] === 'Z' || fields[0] === 'X') return false;
  const now = await startIn(fields);
  return started === '' || now === '' || now === started;
}

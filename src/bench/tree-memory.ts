import { readdir, readFile } from 'node:fs/promises';

/** Milliseconds between two looks. */
const EVERY = 500;

/**
 * Watches how much memory a process and all that it starts hold together (the proportional set size of Linux's /proc: what
 * some of them share, as their program, counts once).
 * Call the result to end; it gives the most, in MB. Elsewhere than on Linux it gives NaN.
 */
export function watchMemory(pid: number): () => number {
  let most = Number.NaN;
  let looking = false;
  const timer = setInterval(async () => {
    if (looking) return;
    looking = true;
    const now = await heldBy(pid).finally(() => {
      looking = false;
    });
    if (now > 0) most = Math.max(now, Number.isNaN(most) ? 0 : most);
  }, EVERY);
  return () => {
    clearInterval(timer);
    return most;
  };
}

async function heldBy(root: number): Promise<number> {
  const pids = await treeOf(root);
  const held = await Promise.all(pids.map(shareOf));
  return held.reduce((sum, kilobytes) => sum + kilobytes, 0) / 1024;
}

async function treeOf(root: number): Promise<readonly number[]> {
  const names = (await readdir('/proc').catch(() => [])).filter((name) => /^\d+$/.test(name));
  const parents = await Promise.all(
    names.map(async (name) => [Number(name), await parentOf(name)]),
  );
  const tree = [root];
  for (const found of tree)
    for (const [pid = 0, parent] of parents) if (parent === found) tree.push(pid);
  return tree;
}

async function parentOf(pid: string): Promise<number> {
  const text = await readFile(`/proc/${pid}/stat`, 'utf8').catch(() => '');
  // The name of the program, in brackets, may hold anything.
  return Number(text.slice(text.lastIndexOf(')') + 2).split(' ')[1]);
}

async function shareOf(pid: number): Promise<number> {
  const text = await readFile(`/proc/${pid}/smaps_rollup`, 'utf8').catch(() => '');
  return Number(/^Pss:\s+(\d+)/m.exec(text)?.[1] ?? 0);
}

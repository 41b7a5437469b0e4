import { fork } from 'node:child_process';
import { once } from 'node:events';
import { resolve } from 'node:path';

type Told<Answer> = { readonly answer: Answer } | { readonly failure: string };

/** Has something done by a file of `src/build` in a process of its own, and gives its answer. Throws what it threw, or that it ended early. */
export function askProcess<Answer>(
  file: string,
  order: object,
  signal: AbortSignal,
): Promise<Answer> {
  return new Promise((done, reject) => {
    const child = fork(resolve('src/build', file), { signal, killSignal: 'SIGKILL' });
    child.send(order);
    let told: Told<Answer> | undefined;
    child.on('message', (message) => {
      told = message as Told<Answer>;
    });
    child.once('error', reject);
    child.once('close', (code, killed) => {
      if (told && 'answer' in told) done(told.answer);
      else reject(new Error(told?.failure ?? `${file} ended early (${killed ?? code})`));
    });
  });
}

/** What such a file does: takes the order, works, and answers. */
export async function answerOnce<Order, Answer>(
  work: (order: Order) => Promise<Answer>,
): Promise<void> {
  const [order] = (await once(process, 'message')) as [Order];
  // Where the build has ended, nobody waits.
  process.once('disconnect', () => process.exit());
  const told: Told<Answer> = await work(order).then(
    (answer) => ({ answer }),
    (error: Error) => ({ failure: error.message }),
  );
  // The way to the build is closed once all has gone through it.
  process.send?.(told, () => process.disconnect());
}

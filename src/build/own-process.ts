import { fork } from 'node:child_process';
import { once } from 'node:events';
import { getCompileCacheDir } from 'node:module';
import { resolve } from 'node:path';

type Told<Answer> = { readonly answer: Answer } | { readonly failure: Failure };

/** What of an error goes from one process to another: what the machine says that it refused, too. */
type Failure = Pick<NodeJS.ErrnoException, 'message' | 'code' | 'path' | 'syscall'> & {
  readonly dest?: string | undefined;
  readonly cause?: Failure | undefined;
};

/** How a process is run. */
interface Running {
  /** Ends it. */
  readonly signal?: AbortSignal;
  /** For Node and V8. */
  readonly flags?: readonly string[];
}

/** Has something done by a file below `src` in a process of its own, and gives its answer. Throws what it threw, or that it ended early. */
export function askProcess<Answer>(
  file: string,
  order: object,
  { signal, flags = [] }: Running = {},
): Promise<Answer> {
  return new Promise((done, reject) => {
    const child = fork(resolve('src', file), {
      ...{ signal, killSignal: 'SIGKILL', execArgv: [...process.execArgv, ...flags] },
      // What is loaded at every start is compiled once.
      env: { ...process.env, NODE_COMPILE_CACHE: getCompileCacheDir() },
    });
    let told: Told<Answer> | undefined;
    child.on('message', (message) => {
      told = message as Told<Answer>;
    });
    child.once('error', reject);
    child.once('close', (code, killed) => {
      if (told && 'answer' in told) done(told.answer);
      else if (told) reject(errorOf(told.failure));
      else reject(new Error(`${file} ended early (${killed ?? code})`));
    });
    // One that could not be started says so by itself.
    if (child.connected) child.send(order);
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
    (error: Failure) => ({ failure: failureOf(error) }),
  );
  // The way to the build is closed once all has gone through it.
  process.send?.(told, () => process.disconnect());
}

function failureOf({ message, code, path, dest, syscall, cause }: Failure): Failure {
  return { message, code, path, dest, syscall, cause: cause && failureOf(cause) };
}

function errorOf({ cause, ...failure }: Failure): Error {
  return Object.assign(new Error(failure.message, { cause: cause && errorOf(cause) }), failure);
}

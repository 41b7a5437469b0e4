import { createInterface } from 'node:readline/promises';

/** A question in a terminal. */
export interface Question {
  readonly name: string;
  readonly ask: string;
  /** What an empty answer means. */
  readonly otherwise?: string | undefined;
  /** Says what is wrong with an answer, or nothing. */
  readonly wrong: (answer: string) => string | undefined;
}

/** Asks one after the other until each answer holds. Nothing when the asking is broken off. */
export async function askTexts(
  questions: readonly Question[],
): Promise<Readonly<Record<string, string>> | undefined> {
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  const closed = new Promise<undefined>((resolve) =>
    terminal.once('close', () => resolve(undefined)),
  );
  const answers: Record<string, string> = {};
  try {
    for (const { name, ask, otherwise, wrong } of questions) {
      while (answers[name] === undefined) {
        const asked = terminal.question(`${ask}${otherwise ? ` [${otherwise}]` : ''}: `);
        const given = await Promise.race([asked, closed]);
        if (given === undefined) return undefined;
        const answer = given.trim() || (otherwise ?? '');
        const told = answer === '' ? 'is needed' : wrong(answer);
        if (told === undefined) answers[name] = answer;
        else console.log(`  ${told}`);
      }
    }
    return answers;
  } catch {
    return undefined;
  } finally {
    terminal.close();
  }
}

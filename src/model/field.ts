import { z } from 'zod';

/** What a field carries besides its type: which kind it points to, whether it may be published, and how an editor completes it. */
export interface FieldFacts {
  readonly ref?: string;
  /** What its text is read as: `date`, `amount`, `quantity` … */
  readonly reads?: string;
  readonly private?: true;
  readonly editor?: Record<string, unknown>;
  readonly description?: string;
}

/** A wrong value: what is wrong with it, and what to type instead. */
export interface Refusal {
  readonly wrong: string;
  readonly fix?: string | undefined;
  /** The whole value to type instead, where no other can be meant. */
  readonly mend?: string | undefined;
}

const isRefusal = (result: unknown): result is Refusal =>
  typeof result === 'object' && result !== null && 'wrong' in result;

/** A field read from text by a function that gives a value or says what is wrong. Every scalar of a ledger is text first. */
export function readBy<T>(name: string, read: (text: string) => T | Refusal, facts: FieldFacts) {
  return z
    .string()
    .transform((text, context): T => {
      const result = read(text.trim());
      if (!isRefusal(result)) return result;
      context.issues.push({
        code: 'custom',
        message: result.wrong,
        input: text,
        params: { name, fix: result.fix, mend: result.mend },
      });
      return z.NEVER;
    })
    .meta({ reads: name, ...facts });
}

/** What an editor takes for a text that may look like a number. */
export const numberOrText = { type: ['string', 'number'] };

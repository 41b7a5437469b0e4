import { say } from './say.ts';

/** What is wrong with the arguments of a command, in a sentence of ours; what Node says of them is for programmers. */
export function wrongUse(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  const [, word = ''] = /'(-{0,2}[^' ]*)/.exec(message) ?? [];
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') return `There is no option ${word}.`;
  if (code === 'ERR_PARSE_ARGS_UNEXPECTED_POSITIONAL') return `"${word}" is one word too many.`;
  if (code !== 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') return message;
  return / does not take /.test(message) ? `${word} takes no value.` : `${word} needs a value.`;
}

/** Says what is wrong with the arguments, above what a command prints of its use. */
export function tellWrongUse(error: unknown): undefined {
  console.error(wrongUse(error));
}

/** For a command that takes no arguments: says so where there are some, and gives the exit status. */
export function noArguments(command: string, args: readonly string[]): number | undefined {
  if (args.length === 0) return undefined;
  return say(`"${args[0]}": npm ${command} takes no arguments.`, 2);
}

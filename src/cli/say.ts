/** Says the last word of a command where it belongs, by its exit status, and returns that. */
export function say(text: string, status: number): number {
  if (status === 0) console.log(text);
  else console.error(text);
  return status;
}

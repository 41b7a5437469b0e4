/** A value that is there because the page's address was made from it. @throws when it isn't, which is a mistake of ours. */
export function found<Value>(value: Value | undefined, what: string): Value {
  if (value === undefined)
    throw new Error(`this is our bug: no ${what} for a page that was asked for`);
  return value;
}

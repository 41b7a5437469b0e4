/** Calls a function when its result is first wanted, freezes that result, and keeps it. */
export function once<Result>(make: () => Result): () => Result {
  let made: { readonly result: Result } | undefined;
  return () => {
    made ??= { result: deepFreeze(make()) };
    return made.result;
  };
}

/** Freezes a value and all objects and lists in it, those that a map holds too (a map itself can't be frozen). */
export function deepFreeze<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const inner of value instanceof Map ? value.values() : Object.values(value))
    deepFreeze(inner);
  return value;
}

/** Calls a function once for each object it is given, freezes what it makes, and keeps that as long as the object is there. */
export function oncePer<Key extends object, Result>(
  make: (key: Key) => Result,
): (key: Key) => Result {
  const made = new WeakMap<Key, { readonly result: Result }>();
  return (key) => {
    const kept = made.get(key) ?? { result: deepFreeze(make(key)) };
    made.set(key, kept);
    return kept.result;
  };
}

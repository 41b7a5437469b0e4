/**
 * The one JSON text of plain data, by RFC 8785 (JSON Canonicalization Scheme): no white space, members sorted, one spelling
 * for each string and number. Two programs that hold the same data get the same bytes, so their hashes agree.
 *
 * It does not normalise Unicode (RFC 8785 §3.1): text is put into form C when it is read, before it gets here.
 *
 * @throws TypeError with the path of a value that has no JSON of its own: a lone surrogate, NaN, Infinity, undefined, a date …
 * @example canonicalJson({ b: 2, a: 'é' }) // '{"a":"é","b":2}'
 */
export function canonicalJson(value: unknown): string {
  return serialize(value, '$', []);
}

/** RFC 8785 §3.2: literals, strings, numbers, arrays and objects, each by its clause. */
function serialize(value: unknown, path: string, around: readonly object[]): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'string') return serializeString(value, path);
  if (typeof value === 'number') return serializeNumber(value, path);
  if (typeof value !== 'object') return refuse(path, `is ${article(typeof value)}`);

  if (around.includes(value)) return refuse(path, 'contains itself');
  const inside = [...around, value];
  if (Array.isArray(value)) return serializeArray(value, path, inside);
  return serializeObject(value, path, inside);
}

/** RFC 8785 §3.2.2.2: as ECMAScript writes it; a lone surrogate has no UTF-8 and is an error. */
function serializeString(text: string, path: string): string {
  return text.isWellFormed() ? JSON.stringify(text) : refuse(path, 'has half a surrogate pair');
}

/** RFC 8785 §3.2.2.3: as ECMAScript writes it, so the shortest text that reads back as the same double; −0 is `0`. */
function serializeNumber(number: number, path: string): string {
  return Number.isFinite(number) ? String(number) : refuse(path, `is ${number}`);
}

/** RFC 8785 §3.2.3: the order of elements stays. */
function serializeArray(
  array: readonly unknown[],
  path: string,
  inside: readonly object[],
): string {
  // Array.from visits the holes of a sparse array too; map would leave them out.
  const elements = Array.from(array, (element, index) =>
    serialize(element, `${path}[${index}]`, inside),
  );
  return `[${elements.join(',')}]`;
}

/** RFC 8785 §3.2.3: members sorted by the UTF-16 code units of their names, which is how `sort` compares strings. */
function serializeObject(object: object, path: string, inside: readonly object[]): string {
  requirePlain(object, path);
  const members = Object.entries(object)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, value]) => {
      const at = `${path}.${name}`;
      return `${serializeString(name, at)}:${serialize(value, at, inside)}`;
    });
  return `{${members.join(',')}}`;
}

/** A date, a map or an instance of a class is more than its members say. */
function requirePlain(object: object, path: string): void {
  const prototype: unknown = Object.getPrototypeOf(object);
  if (prototype !== null && prototype !== Object.prototype)
    refuse(path, `is ${article(object.constructor?.name ?? 'object')}, not plain data`);
  if (Object.getOwnPropertySymbols(object).length > 0) refuse(path, 'has a symbol for a name');
}

function article(name: string): string {
  if (name === 'undefined') return name;
  return /^[aeiou]/i.test(name) ? `an ${name}` : `a ${name}`;
}

function refuse(path: string, wrong: string): never {
  throw new TypeError(`${path} ${wrong}`);
}

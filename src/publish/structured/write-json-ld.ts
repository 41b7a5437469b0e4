/** Structured data in the words of schema.org. */
export type Structured = Readonly<Record<string, unknown>>;

/** Characters that could end a script element, open a comment in it, or end a line of JavaScript. */
const UNSAFE = /[<>&\u2028\u2029]/g;

/**
 * Structured data as JSON-LD for a script element (JSON-LD 1.1 §7). Nothing in it can end the element: what HTML might read
 * is written as JSON escapes, which mean the same to any reader of JSON. A block of data is not run, so it needs no nonce.
 */
export function writeJsonLd(data: Structured): string {
  const json = JSON.stringify({ '@context': 'https://schema.org', ...data });
  return json.replace(UNSAFE, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

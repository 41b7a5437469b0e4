/** A cell's alignment as Markdown's parser writes it: a style, as text or as an object. */
const ALIGNMENT = /(?:text-align|textAlign)\W*(left|center|right)/;

/** Attributes of a cell with its alignment as a class, since no page may hold a style of its own. */
export function alignedCell({
  style = '',
  ...attributes
}: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const written = typeof style === 'string' ? style : JSON.stringify(style);
  const side = ALIGNMENT.exec(written)?.[1];
  return side ? { ...attributes, class: `to-${side}` } : attributes;
}

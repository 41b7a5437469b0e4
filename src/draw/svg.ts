/** A piece of a drawing. Attributes are numbers, texts or absent; text is escaped when it is written out. */
export interface SvgNode {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string | number | undefined>>;
  readonly children: readonly (SvgNode | string)[];
}

/** A whole drawing and what it shows in words. */
export interface Drawing {
  readonly root: SvgNode;
  readonly title: string;
}

/** Makes a piece of a drawing. */
export function node(
  name: string,
  attributes: SvgNode['attributes'] = {},
  ...children: readonly (SvgNode | string)[]
): SvgNode {
  return { name, attributes, children };
}

/**
 * A drawing as wide as its place and of a fixed height. Positions across are in per cent, so lettering and line widths stay
 * the same on a phone and on a wide sheet; nothing is scaled.
 */
export function fluidDrawing(height: number, title: string, children: readonly SvgNode[]): Drawing {
  return {
    title,
    root: node(
      'svg',
      { width: '100%', height, role: 'img', 'aria-label': title, class: 'drawing' },
      ...children,
    ),
  };
}

/** Per cent across, with three decimals at most so that drawings are short and the same on every machine. */
export function across(percent: number): string {
  return `${Number(percent.toFixed(3))}%`;
}

/** SVG text of a node. */
export function writeSvg({ name, attributes, children }: SvgNode): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escapeXml(writeValue(value))}"`)
    .join('');
  const inner = children
    .map((child) => (typeof child === 'string' ? escapeXml(child) : writeSvg(child)))
    .join('');
  return inner === '' ? `<${name}${written}/>` : `<${name}${written}>${inner}</${name}>`;
}

/** Numbers have two decimals at most: a hundredth of a pixel, the same on every machine. */
function writeValue(value: string | number | undefined): string {
  return typeof value === 'number' ? String(Number(value.toFixed(2))) : String(value);
}

/** Text as it may stand in XML and in HTML, attributes included. */
export function escapeXml(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

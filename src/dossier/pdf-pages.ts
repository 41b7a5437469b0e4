/**
 * The page on which each named destination of a PDF stands, counted from 1. It reads what the browser's own writer writes: plain
 * objects, of which only the streams are packed (ISO 32000-1, 7.7.3 page tree, 12.3.2.3 named destinations).
 */
export function pagesOfNames(pdf: Uint8Array): ReadonlyMap<string, number> {
  const text = Buffer.from(pdf).toString('latin1');
  const root = /\/Pages (\d+) 0 R/.exec(text)?.[1];
  const order = new Map(leavesOf(text, root ?? '').map((page, index) => [page, index + 1]));
  return new Map(
    [...text.matchAll(/\/([\w.-]+) \[(\d+) 0 R \/XYZ/g)].flatMap(([, name = '', page = '']) => {
      const number = order.get(page);
      return number === undefined ? [] : [[name, number] as const];
    }),
  );
}

/** Object numbers of the pages below a node of the page tree, in order. */
function leavesOf(text: string, node: string): string[] {
  const start = text.search(new RegExp(`(?:^|\\n)${node} 0 obj\\n<<`));
  const body = start < 0 ? '' : text.slice(start, text.indexOf('endobj', start));
  const kids = /\/Kids \[([^\]]*)\]/.exec(body)?.[1];
  if (kids === undefined) return /\/Type \/Page\s/.test(body) ? [node] : [];
  return [...kids.matchAll(/(\d+) 0 R/g)].flatMap(([, kid = '']) => leavesOf(text, kid));
}

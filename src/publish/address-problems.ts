import { nearest } from '../read/nearest.ts';
import { type Place, type Problem, problemAt } from '../read/problem.ts';
import { addressOfFile, parseManifest } from './manifest.ts';
import { addressNow, type Moved } from './moved.ts';

/** Where the manifest of what was published is kept, in the content folder. */
export const PUBLISHED = 'published.txt';

/** What addresses are checked by. */
export interface AddressInput {
  /** Addresses of the pages that the site will have, inside the site. */
  readonly pages: ReadonlySet<string>;
  readonly moved: readonly Moved[];
  /** Where a field of one of the moves stands. */
  placeOf(index: number, field: keyof Moved): Place;
  /** The text of the manifest, where one is kept. */
  readonly published: string | undefined;
}

/** Every page that was published is still there or has moved, and every move leads to a page. */
export function addressProblems(input: AddressInput): Problem[] {
  return [...movesLead(input), ...nothingVanished(input)];
}

function movesLead({ pages, moved, placeOf }: AddressInput): Problem[] {
  return moved.flatMap(({ from, to }, index) => {
    const at = (field: keyof Moved, code: string, message: string, fix: string) => [
      problemAt(placeOf(index, field), `moved/${code}`, `moved: ${message}`, fix),
    ];
    if (moved.findIndex((move) => move.from === from) < index)
      return at('from', 'twice', `"${from}" stands here twice`, 'keep one of them');
    if (pages.has(from))
      return at('from', 'still-there', `"${from}" is still a page`, 'take the move out');
    const now = addressNow(from, moved);
    if (now === undefined)
      return at('to', 'circle', `"${from}" leads back to itself`, 'let the last lead to a page');
    if (!from.endsWith('/') || pages.has(pageOf(now))) return [];
    const near = nearest(pageOf(now), pages);
    return at(
      'to',
      'nowhere',
      `there is no page "${pageOf(to)}"`,
      near ? `write "${near}"` : 'name a page of the site, like "my-machine/specs/"',
    );
  });
}

function nothingVanished({ pages, moved, published }: AddressInput): Problem[] {
  if (published === undefined) return [];
  const manifest = parseManifest(published);
  if ('line' in manifest) {
    const place = { file: PUBLISHED, line: manifest.line, column: 1 };
    const fix = 'restore it as "npm run publish:check -- --keep" wrote it';
    return [problemAt(place, 'published/broken', 'this is no line of a manifest', fix)];
  }
  const led = new Set(moved.map(({ from }) => from));
  return [...manifest.keys()].flatMap((path, index) => {
    const address = addressOfFile(path);
    if (address === path || pages.has(address) || led.has(address)) return [];
    const place = { file: PUBLISHED, line: index + 1, column: 67 };
    const message = `the page "${address}" was published, and is gone`;
    return [problemAt(place, 'published/vanished', message, movedLines(address, pages))];
  });
}

/** What to type in site.yaml for an address that is gone. */
export function movedLines(address: string, pages: Iterable<string>): string {
  const near = nearest(address, pages);
  const to = near || address.replace(/[^/]+\/?$/, '') || [...pages].find((page) => page !== '');
  return `bring it back, or say in site.yaml where it is now:\nmoved:\n  - from: ${address}\n    to: ${to}`;
}

function pageOf(address: string): string {
  return address.replace(/#.*$/, '');
}

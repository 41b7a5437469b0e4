import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseFragment } from 'parse5';
import { expect, inject, test } from 'vitest';
import { library } from '../../src/calc/library.ts';
import { quantityKinds } from '../../src/units/kinds.ts';
import { attribute, type Element, type Node, readPages } from './pages.ts';

const site = inject('bracketedSite');

/** All that the builder wrote, and what a calculation says in English (test/calc/told.test.ts looks after its other languages). */
const written = readdirSync(site.content, { recursive: true, withFileTypes: true })
  .filter((item) => item.isFile() && /\.(yaml|csv|mdx)$/.test(item.name))
  .map((item) => readFileSync(join(item.parentPath, item.name), 'utf8'))
  .concat(JSON.stringify([...library.values()]))
  .concat(readdirSync(site.content, { recursive: true, encoding: 'utf8' }).map(titleOf))
  .join('\n')
  .toLowerCase();

/** A photo without a title of its own is called by its file. */
function titleOf(file: string): string {
  return file
    .replace(/.*[/\\]/, '')
    .replace(/\.\w+$/, '')
    .replaceAll('-', ' ');
}

/** The same, cut like the text of a page: a single word must be a whole phrase, or any word of a log would do. */
const running = written.replaceAll(/\s+/g, ' ');
const phrases = new Set([...cut(written), ...cut(running)]);

const units = Object.values(quantityKinds).flatMap((kind) => kind.map(({ symbol }) => symbol));
const months = (['short', 'long'] as const).flatMap((month) =>
  Array.from({ length: 12 }, (_, index) =>
    new Intl.DateTimeFormat('en-XA', { month }).format(new Date(2026, index, 1)),
  ),
);
const currencies = ['EUR', 'GBP'];
/** Names of standards, and of the types in one; a unit as builders write it. */
const names = ['Atom', 'JSON', 'number', 'integer', 'boolean', 'mpg'];
const tables = readdirSync(join(site.folder, 'lapwing/data')).map((file) =>
  file.replace(/\.\w+$/, ''),
);

/** Elements whose text is no prose of ours: files, formulas, data, citations of standards. */
const APART = new Set(['script', 'style', 'template', 'code', 'pre', 'math', 'time']);
const SPOKEN = ['aria-label', 'title', 'alt', 'placeholder'];

/** Texts of a page that stand in no brackets, each with the element it stands in. */
function bare(node: Node): [element: string, text: string][] {
  const found: [string, string][] = [];
  const walk = (element: Element | Node) => {
    if ('attrs' in element) {
      if (
        APART.has(element.tagName) ||
        ['citation', 'name'].includes(attribute(element, 'class') ?? '')
      )
        return;
      for (const name of SPOKEN) {
        const text = attribute(element, name);
        if (text) found.push([`${element.tagName} ${name}`, outside(text)]);
      }
    }
    const children: readonly Node[] = 'childNodes' in element ? element.childNodes : [];
    // Brackets may open in one text and close in another, with an element between them.
    const texts = children.map((child) =>
      child.nodeName === '#text' && 'value' in child ? child.value : '\n',
    );
    found.push([element.nodeName, outside(texts.join(''))]);
    children.forEach(walk);
  };
  walk(node);
  return found.flatMap(([element, text]) =>
    phrasesOf(text).map((phrase): [string, string] => [element, phrase]),
  );
}

function outside(text: string): string {
  let depth = 0;
  return Array.from(text, (letter) => {
    if (letter === '⟦') depth += 1;
    if (letter === '⟧') depth -= 1;
    return depth === 0 && letter !== '⟧' ? letter : '';
  }).join('');
}

function phrasesOf(text: string): string[] {
  return cut(text).filter((part) => /\p{Ll}{3}/u.test(part) && !isNoWordOfOurs(part));
}

function cut(text: string): string[] {
  return text
    .replaceAll(/\b[\w-]+\.([\w]+\.)?(csv|json|jsonl|txt|py|pem)\b/g, '')
    .split(/[\n,;·:()×=.<>{}[\]"*`|]|^ *(?:-|#+) /m)
    .map((part) => part.replaceAll(/\s+/g, ' ').trim());
}

const known = new Set([...units, ...months, ...currencies, ...names, ...tables]);

function isNoWordOfOurs(phrase: string): boolean {
  const words = phrase.split(/[\s\d./±−+]+/).filter((word) => /\p{L}{3}/u.test(word));
  const small = phrase.toLowerCase();
  // A moment of a video stands before what it shows, and its colon cuts it in two.
  const moment = small.replace(/^\d\d /, '');
  return (
    phrases.has(small) ||
    phrases.has(moment) ||
    (moment.includes(' ') && running.includes(moment)) ||
    words.every((word) => known.has(word)) ||
    // Numbers of documents, addresses, ids and names of files and tables.
    /^[A-Z\d-]+$|[/_#]|^[\w+-]{43}$|^withheld-/.test(phrase)
  );
}

test('every word of ours that a page prints comes from the words of a language', () => {
  const found = readPages(site).flatMap(({ file, root }) =>
    bare(root).map(([element, phrase]) => `${element}: ${phrase} (${file})`),
  );
  expect([...new Set(found)]).toEqual([]);
});

test('a word that does not come from there is found', () => {
  const page = parseFragment(
    '<p>⟦Total of <b>the day</b>⟧ 3 lines of oil</p><nav aria-label="Sheets to and fro"></nav><p>⟦Sum⟧ 12.5 mm</p>',
  );
  expect(bare(page)).toEqual([
    ['p', '3 lines of oil'],
    ['nav aria-label', 'Sheets to and fro'],
  ]);
});

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { attribute, type Element, readPages, select, textOf } from './pages.ts';

const site = inject('germanSite');
const pages = readPages(site);
const ENTRY = 'ostermoor/log/2026-06-27-two-collars/index.html';

function page(file: string) {
  const found = pages.find((item) => item.file === file);
  if (found === undefined) throw new Error(`there is no page ${file}`);
  return found.root;
}
const only = (file: string, selector: string): Element => {
  const [element] = select(page(file), selector);
  if (element === undefined) throw new Error(`${file} has no ${selector}`);
  return element;
};
const languageOf = (element: Element) => [attribute(element, 'lang'), attribute(element, 'dir')];
const plain = (element: Element) => textOf(element).replaceAll(/\s+/g, ' ').trim();

describe('a site in German', () => {
  test('says so on every page', () => {
    expect(pages.length).toBeGreaterThan(50);
    const others = pages.filter(
      ({ root }) => !select(root, 'html').every((html) => String(languageOf(html)) === 'de-DE,ltr'),
    );
    expect(others.map(({ file }) => file)).toEqual([]);
  });

  test('has German words in the frame of a sheet and in what an entry added', () => {
    expect(plain(only(ENTRY, '.skip'))).toBe('Zum Inhalt');
    const nav = select(page(ENTRY), 'nav').map((element) => attribute(element, 'aria-label'));
    expect(nav).toEqual(['Blätter', 'Diese Phase', 'Weitere Einträge']);
    const block = select(only(ENTRY, '.title-block'), 'dt').map(plain);
    expect(block).toEqual(
      expect.arrayContaining(['Eigentümer', 'Dokumentenart', 'Datum', 'Blatt']),
    );
    const heads = select(only(ENTRY, '.tally'), 'th').map(plain);
    expect(heads).toEqual([
      ...['Mit diesem Eintrag', 'Stand bis hier'],
      ...['Stunden', 'Geld', 'Eingebaute Teile', 'Messungen'],
    ]);
  });

  test('writes dates and decimals the German way', () => {
    expect(plain(only('ostermoor/index.html', '#standing'))).toBe('Stand der Arbeit');
    const standing = select(page('ostermoor/index.html'), 'dl.standing').map(plain).join(' ');
    expect(standing).toMatch(/\d\.\d{3},\d{2} €/);
    expect(standing).not.toMatch(/\d,\d{3}\.\d/);
    const [when] = select(only(ENTRY, '.when'), 'time');
    expect(when && plain(when)).toBe('27. Juni 2026');
    expect(plain(only(ENTRY, '.tally'))).toContain('Stand 27. Juni 2026');
  });

  test('tells the language of what its builder wrote, and of its own words among it', () => {
    expect(languageOf(only(ENTRY, 'article'))).toEqual(['en-GB', undefined]);
    const [caption] = select(only(ENTRY, '.tally'), 'caption');
    expect(caption && languageOf(caption)).toEqual(['de-DE', undefined]);
    expect(languageOf(only('ostermoor/index.html', 'h1'))).toEqual(['en-GB', undefined]);
    const data = select(page(ENTRY), 'script').map(textOf).join('\n');
    expect(data).toContain('"inLanguage":"en-GB"');
  });

  test('turns round what is written from the right, and turns its own words back in it', () => {
    const file = 'press/log/2025-04-13-the-ram-slides/index.html';
    expect(languageOf(only(file, 'article'))).toEqual(['ar', 'rtl']);
    const [date] = select(only(file, '.when'), 'time');
    expect(date && languageOf(date)).toEqual(['de-DE', 'ltr']);
    expect(languageOf(only(file, 'html'))).toEqual(['de-DE', 'ltr']);
  });

  test('prints the signal words of hazards in German', () => {
    const signals = select(page('method/index.html'), '.signal-word').map(plain);
    expect(signals.length).toBeGreaterThan(3);
    expect(signals.filter((word) => !['GEFAHR', 'WARNUNG', 'VORSICHT'].includes(word))).toEqual([]);
  });

  test('names the language of each entry in its feeds', () => {
    const atom = readFileSync(join(site.folder, 'feed.atom'), 'utf8');
    expect(atom).toContain('xml:lang="de-DE"');
    const entries = [...atom.matchAll(/<entry([^>]*)>/g)].map(([, attributes]) => attributes);
    expect(new Set(entries)).toEqual(new Set([' xml:lang="en-GB"', ' xml:lang="ar"']));
    const { language, items } = JSON.parse(readFileSync(join(site.folder, 'feed.json'), 'utf8'));
    expect(language).toBe('de-DE');
    const own = items.map((item: { language?: string }) => item.language);
    expect(new Set(own)).toEqual(new Set(['en-GB', 'ar']));
  });
});

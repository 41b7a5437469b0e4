import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Changes } from '../check/content-folder.ts';
import { type Dirs, filesOf, inWorkshop, runCommand } from './run-command.ts';

const MAPPING = `- id: valley-bank
  files: umsaetze-*.csv
  kind: costs
  encoding: windows-1252
  columns: {date: Buchungstag, what: Verwendungszweck, supplier: Name, debit: Soll, credit: Haben}
  dates: DD.MM.YYYY
  decimals: 1.234,56
  fixed: {withhold: what, phase: rebuild}
  rules:
    - {has: [Saldo, Kontostand], skip: total of the bank}
    - {column: Status, has: vorgemerkt, skip: not booked yet}
    - {has: lebensmittel, skip: groceries}
    - {has: Schrott, set: {kind: scrap, category: other}}
    - {has: Stahl, set: {category: material}}
    - {has: Kaffee, set: {category: other}}
    - {has: Werkzeug, set: {category: tool}}
`;

const STATEMENT = `Umsatzanzeige;Talbank eG
Girokonto "Werkstatt"

Buchungstag;Status;Name;Verwendungszweck;Soll;Haben;
02.05.2025;gebucht;Gebrüder Höfer;"Stahlblech 1,5 mm
2 Tafeln, ""4711""";-1.234,50;;
03.05.2025;gebucht;Café Amsel;Kaffee;3,20-;;
03.05.2025;gebucht;Café Amsel;Kaffee;3,20-;;
05.05.2025;gebucht;Markt;Lebensmittel;-61,17;;
06.05.2025;gebucht;Kant;Schrott 180 kg;;38,00;
08.05.2025;gebucht;Unbekannt;Überweisung;-20,00;;
09.05.2025;gebucht;Brix;Werkzeug: Bohrer;-12.50;;
31.04.2025;gebucht;Brix;Werkzeug: Feile;-12,50;;
10.05.2025;gebucht;Brix;"Werkzeug: Säge;-9,90;;
11.05.2025;vorgemerkt;Brix;Werkzeug: Feile;-7,00;;
12.05.2025;gebucht;Kunde;Werkzeug zurück;;5,00;

;;;Saldo;-1.400,00;43,00;
Kontostand: 812,33
`;

const latin = (text: string) => Buffer.from(text.replaceAll('\n', '\r\n'), 'latin1');

interface Imported {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

async function importing(dirs: Dirs, bytes: Uint8Array, ...args: string[]): Promise<Imported> {
  const file = join(dirs.dist, '..', 'umsaetze-05.csv');
  await writeFile(file, bytes);
  return runCommand(['import', file, ...args], dirs);
}

const withMapping = (use: (dirs: Dirs) => Promise<void>, changes: Changes = {}) =>
  inWorkshop({ 'press/imports.yaml': MAPPING, ...changes }, use);
const costs = (dirs: Dirs) => readFile(join(dirs.content, 'press/ledger/costs.csv'), 'utf8');
const sumOf = (out: string) => /^.* read = .*$/m.exec(out)?.[0];

describe('import', () => {
  it('shows what becomes of each line and writes nothing', () =>
    withMapping(async (dirs) => {
      const before = await filesOf(dirs.content);
      const { status, out } = await importing(dirs, latin(STATEMENT));
      expect(status).toBe(1);
      expect(out).toMatchInlineSnapshot(`
        "line  what     row, or why not
           5  add      2025-05-02  1234.50  material  rebuild  Stahlblech 1,5 mm 2 Tafeln, "4711"  withhold: what  supplier: Gebrüder Höfer
           7  add      2025-05-03  3.20  other  rebuild  Kaffee  withhold: what  supplier: Café Amsel
           8  add      2025-05-03  3.20  other  rebuild  Kaffee  withhold: what  supplier: Café Amsel
           9  skipped  groceries (rule 3)
                       05.05.2025 · gebucht · Markt · Lebensmittel · -61,17
          10  add      2025-05-06  38.00  scrap  other  rebuild  Schrott 180 kg  withhold: what  supplier: Kant
          11  refused  no column, fixed value or rule gives "category"
                       08.05.2025 · gebucht · Unbekannt · Überweisung · -20,00
          12  refused  "-12.50" in "Soll" is no amount like 1.234,56
                       09.05.2025 · gebucht · Brix · Werkzeug: Bohrer · -12.50
          13  refused  "31.04.2025" in "Buchungstag" is not written like DD.MM.YYYY
                       31.04.2025 · gebucht · Brix · Werkzeug: Feile · -12,50
          14  refused  a quoted cell is never closed
                       10.05.2025;gebucht;Brix;"Werkzeug: Säge;-9,90;;
          15  skipped  not booked yet (rule 2)
                       11.05.2025 · vorgemerkt · Brix · Werkzeug: Feile · -7,00
          16  refused  money came in; a rule must skip it or set kind to one of: sale, scrap, refund, deposit-back
                       12.05.2025 · gebucht · Kunde · Werkzeug zurück · 5,00
          18  skipped  total of the bank (rule 1)
                       Saldo · -1.400,00 · 43,00
          19  skipped  total of the bank (rule 1)
                       Kontostand: 812,33

        13 read = 4 to add + 0 known + 4 skipped + 5 refused
        (besides the header, 3 lines above it and 1 blank line below)
        Nothing is written yet: add --write.
        "
      `);
      expect(await filesOf(dirs.content)).toEqual(before);
    }));

  it('adds rows once: the second time all are known, changed rows too', () =>
    withMapping(async (dirs) => {
      const first = await importing(dirs, latin(STATEMENT), '--write');
      expect(sumOf(first.out)).toBe('13 read = 4 added + 0 known + 4 skipped + 5 refused');
      const written = await costs(dirs);
      expect(written).toContain('1234.50');
      expect(written.match(/3\.20/g)).toHaveLength(2);
      const changed = written.replace('3.20,other', '3.20,consumable');
      expect(changed).not.toBe(written);
      await writeFile(join(dirs.content, 'press/ledger/costs.csv'), changed);

      const second = await importing(dirs, latin(STATEMENT), '--write');
      expect(sumOf(second.out)).toBe('13 read = 0 added + 4 known + 4 skipped + 5 refused');
      expect(await costs(dirs)).toBe(changed);
      expect((await runCommand(['check'], dirs)).out).toContain('0 problems');
    }));

  it('adds again what was taken back, also where another row has an id of it by now', () =>
    withMapping(async (dirs) => {
      const before = await costs(dirs);
      await importing(dirs, latin(STATEMENT), '--write');
      expect((await runCommand(['undo'], dirs)).status).toBe(0);
      expect(await costs(dirs)).toBe(before);
      const brush = ['add', 'cost', '7.77', 'consumable', 'teardown', 'Brush'];
      expect((await runCommand(brush, dirs)).status).toBe(0);
      const again = await importing(dirs, latin(STATEMENT), '--write');
      expect(sumOf(again.out)).toBe('13 read = 4 added + 0 known + 4 skipped + 5 refused');
      expect(await costs(dirs)).toContain('1234.50');
    }));

  it('adds a third equal line of a later file, and says which rows are gone', () =>
    withMapping(async (dirs) => {
      await importing(dirs, latin(STATEMENT), '--write');
      const coffee = '03.05.2025;gebucht;Café Amsel;Kaffee;3,20-;;\n';
      const more = await importing(
        dirs,
        latin(STATEMENT.replace(coffee, coffee + coffee)),
        '--write',
      );
      expect(sumOf(more.out)).toBe('14 read = 1 added + 4 known + 4 skipped + 5 refused');

      const rows = (await costs(dirs)).split('\n').filter((row) => !row.includes('1234.50'));
      await writeFile(join(dirs.content, 'press/ledger/costs.csv'), rows.join('\n'));
      const after = await importing(dirs, latin(STATEMENT));
      expect(after.out).toMatch(/known +as c-003, which is gone/);
    }));

  it('keeps refused lines with their bytes, never over another file, and reads them by the same mapping', () =>
    withMapping(async (dirs) => {
      await importing(dirs, latin(STATEMENT), '--write');
      const again = await importing(dirs, latin(STATEMENT), '--write');
      expect(again.out).toContain('umsaetze-05.csv.refused-2.csv');
      const path = join(dirs.dist, '..', 'umsaetze-05.csv.refused.csv');
      const kept = await readFile(path);
      for (const line of STATEMENT.split('\n').filter((one) => /^(08|09|31|10|12)\./.test(one)))
        expect(kept.includes(latin(`;${line}\n`))).toBe(true);

      await writeFile(
        path,
        Buffer.from(kept.toString('latin1').replaceAll('-12.50', '-12,50'), 'latin1'),
      );
      const mended = await runCommand(['import', path, '--write'], dirs);
      expect(sumOf(mended.out)).toBe('5 read = 1 added + 0 known + 0 skipped + 4 refused');
    }));

  it('takes up where it was broken off: before and after the rows were written', () =>
    withMapping(async (dirs) => {
      await importing(dirs, latin(STATEMENT), '--write');
      const path = join(dirs.content, 'press/imported.txt');
      const list = await readFile(path, 'utf8');
      const pending = list.replaceAll(/^valley/gm, '? valley');
      await writeFile(path, pending);
      const after = await importing(dirs, latin(STATEMENT));
      expect(sumOf(after.out)).toBe('13 read = 0 to add + 4 known + 4 skipped + 5 refused');

      await writeFile(path, pending.replaceAll(/c-(\d+)$/gm, 'c-9$1'));
      const without = await importing(dirs, latin(STATEMENT));
      expect(sumOf(without.out)).toBe('13 read = 4 to add + 0 known + 4 skipped + 5 refused');
    }));

  it('refuses other encodings with the line to type', () =>
    withMapping(
      async (dirs) => {
        const { status, err } = await importing(dirs, latin(STATEMENT));
        expect(status).toBe(1);
        expect(err).toContain('is not UTF-8: byte 0xFC on line 5');
        expect(err).toContain('iconv -f WINDOWS-1252 -t UTF-8');
        const wide = Buffer.from(`\ufeff${STATEMENT}`, 'utf16le');
        expect((await importing(dirs, wide)).err).toContain('iconv -f UTF-16LE -t UTF-8');
        const bom = Buffer.from(`\ufeff${STATEMENT}`);
        expect(sumOf((await importing(dirs, bom)).out)).toMatch(/^13 read = 4 to add/);
      },
      { 'press/imports.yaml': MAPPING.replace('  encoding: windows-1252\n', '') },
    ));

  it('guesses a mapping that can be used', () =>
    inWorkshop({}, async (dirs) => {
      const { status, out } = await importing(dirs, latin(STATEMENT));
      expect(status).toBe(1);
      expect(out).toMatchInlineSnapshot(`
        "- id: umsaetze
          files: umsaetze-*.csv
          kind: costs
          encoding: windows-1252
          separator: ;
          columns:
            date: Buchungstag
            debit: Soll
            credit: Haben
            what: Verwendungszweck
            supplier: Name
          dates: DD.MM.YYYY
          decimals: 1.234,56
          fixed:
            withhold: what
            category: other
            phase: teardown
          rules:
            - has: GROCER
              skip: groceries
            - money: in
              skip: no money of this machine

        "
      `);
      await writeFile(join(dirs.content, 'press/imports.yaml'), out);
      const read = await importing(dirs, latin(STATEMENT));
      expect(sumOf(read.out)).toMatch(/^13 read = \d to add/);
    }));

  it('says with its place what is wrong in a mapping', () =>
    withMapping(
      async (dirs) => {
        const { status, out } = await runCommand(['check'], dirs);
        expect(status).toBe(1);
        expect(out).toContain('unknown phase "rebuilt"');
        expect(out).toContain('costs rows have no field "suplier"');
      },
      {
        'press/imports.yaml': MAPPING.replace('rebuild', 'rebuilt').replace('supplier', 'suplier'),
      },
    ));
});

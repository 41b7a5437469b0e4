import { describe, expect, it } from 'vitest';
import { pagesOfNames } from '../../src/dossier/pdf-pages.ts';
import { steadyPdf } from '../../src/dossier/steady-pdf.ts';
import type { Day } from '../../src/time/day.ts';

/** Three pages in a tree of two levels, as ISO 32000-1, 7.7.3 allows; the objects are not in order of the pages. */
const PDF = Buffer.from(
  `%PDF-1.4
1 0 obj
<</CreationDate (D:20261126001711+00'00')
/ModDate (D:20261126001711+00'00')>>
endobj
9 0 obj
<</Type /Page
/Parent 19 0 R>>
endobj
2 0 obj
<</Type /Page
/Parent 20 0 R>>
endobj
11 0 obj
<</Type /Page
/Parent 20 0 R>>
endobj
20 0 obj
<</Type /Pages
/Count 2
/Kids [2 0 R 11 0 R]>>
endobj
19 0 obj
<</Type /Pages
/Count 3
/Kids [20 0 R 9 0 R]>>
endobj
21 0 obj
<</first-one [2 0 R /XYZ 6 828.63 0]
/last [9 0 R /XYZ 6 828.63 0]
/second [11 0 R /XYZ 6 1 0]>>
endobj
22 0 obj
<</Type /Catalog
/Pages 19 0 R
/Dests 21 0 R>>
endobj
`,
  'latin1',
);

describe('the pages of a PDF', () => {
  it('are counted in the order of the page tree, not of the objects', () => {
    expect([...pagesOfNames(PDF)]).toEqual([
      ['first-one', 1],
      ['last', 3],
      ['second', 2],
    ]);
  });

  it('are none in a file that is no PDF', () => {
    expect(pagesOfNames(Buffer.from('<html>')).size).toBe(0);
  });
});

describe('a steady PDF', () => {
  it('has the day of the ledger for its date, and no byte moves', () => {
    const steady = steadyPdf(PDF, '2026-09-26' as Day);
    expect(steady.length).toBe(PDF.length);
    expect(steady.toString('latin1').match(/D:[^)]+/g)).toEqual([
      "D:20260926000000+00'00'",
      "D:20260926000000+00'00'",
    ]);
  });

  it('has each heading once in its outline', () => {
    const steady = (text: string) =>
      steadyPdf(Buffer.from(text, 'latin1'), '2026-09-26' as Day).toString('latin1');
    expect(steady('/Title (9 Marks9 Marks)\n/Dest')).toBe('/Title (9 Marks)       \n/Dest');
    expect(steady('/Title <FEFF00E9004100E90041>')).toBe('/Title <FEFF00E90041>        ');
    expect(steady('/Title (9 Marks)')).toBe('/Title (9 Marks)');
  });

  it('counts tagged cells from 1, in the order that they had', () => {
    const cells = Buffer.from('/ID (node00000274) /Headers [(node00000260)] (node00000274)');
    expect(steadyPdf(cells, '2026-09-26' as Day).toString('latin1')).toBe(
      '/ID (node00000002) /Headers [(node00000001)] (node00000002)',
    );
  });
});

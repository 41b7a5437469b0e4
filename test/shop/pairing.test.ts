import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import exifr from 'exifr';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { CODE_MINUTES, makeCode, tryCode } from '../../src/shop/pairing.ts';
import { revokePhone } from '../../src/shop/phones.ts';
import { ask, hoursItem, inShop, newId, ownHeaders, type Served, sendItem } from './shop.ts';

const pair = (served: Served, code: string) =>
  ask(served.host, 'POST', '/api/pair', {
    headers: { origin: `http://${served.host}`, 'content-type': 'application/json' },
    body: JSON.stringify({ code, name: 'Bench phone' }),
  });

describe('pairing', () => {
  it('takes a code once, gives a token that works, and keeps only its hash', () =>
    inShop(async (served) => {
      const code = await makeCode(served.state, new Date());
      const typed = `${code.slice(0, 4).toLowerCase()} ${code.slice(4)}`;
      const paired = await pair(served, typed);
      expect(paired.status).toBe(200);
      const { token, phone } = JSON.parse(paired.text) as { token: string; phone: string };
      expect([phone, served.codes]).toEqual(['bench-phone', ['bench-phone']]);
      expect(await sendItem({ ...served, token }, hoursItem('Paired'))).toMatchObject({
        status: 200,
      });
      expect((await pair(served, code)).text).toBe('{"refused":"no-code"}');
      const kept = await readFile(join(served.state, 'phones.json'), 'utf8');
      expect(kept).not.toContain(token);
    }));

  it('throws a code away after five wrong tries, right ones included', () =>
    inShop(async (served) => {
      const code = await makeCode(served.state, new Date());
      for (let tries = 0; tries < 5; tries++)
        expect((await pair(served, 'AAAAAAAA')).status).toBe(403);
      expect(served.codes).toEqual([undefined]);
      expect((await pair(served, code)).status).toBe(403);
    }));

  it('lets a code run out', () =>
    inShop(async ({ state }) => {
      const made = new Date('2025-05-01T10:00:00Z');
      const minutesOn = (minutes: number) => new Date(made.getTime() + minutes * 60_000);
      const code = await makeCode(state, made);
      expect(await tryCode(state, 'wrong', minutesOn(CODE_MINUTES - 1))).toBe('wrong');
      expect(await tryCode(state, code, minutesOn(CODE_MINUTES))).toBe('none');
    }));

  it('shuts a revoked phone out at once', () =>
    inShop(async (served) => {
      const lists = () => ask(served.host, 'GET', '/api/lists', { headers: ownHeaders(served) });
      expect((await lists()).status).toBe(200);
      expect(await revokePhone(served.state, 'test-phone')).toBe(true);
      expect((await lists()).status).toBe(401);
    }));
});

describe('what phones send', () => {
  it('is written once however often it is sent, and says where it stands', () =>
    inShop(async (served) => {
      const item = hoursItem('Once');
      const answers = await Promise.all([1, 2, 3].map(() => sendItem(served, item)));
      const texts = answers.map(({ text }) => text);
      expect(new Set(texts)).toEqual(
        new Set(['{"written":[{"file":"press/ledger/hours.csv","line":4,"id":"h-003"}]}']),
      );
      expect(await hoursOf(served)).toMatch(/^h-003,2025-04-20,0:01,rebuild,fit,,Once$/m);
      expect((await hoursOf(served)).match(/Once/g)).toHaveLength(1);
      const other = await sendItem(served, { ...hoursItem('Other'), id: item.id });
      expect([other.status, other.text]).toEqual([409, '{"refused":"other"}']);
    }));

  it('comes from two phones at once without a row lost or mixed', () =>
    inShop(async (served) => {
      const names = ['left', 'right'].flatMap((hand) =>
        Array.from({ length: 12 }, (_, n) => `${hand} ${n}.`),
      );
      const answers = await Promise.all(names.map((name) => sendItem(served, hoursItem(name))));
      expect(answers.map(({ status }) => status)).toEqual(names.map(() => 200));
      const rows = (await hoursOf(served)).trimEnd().split('\n').slice(3);
      expect(rows.map((row) => row.split(',').at(-1)).sort()).toEqual([...names].sort());
      expect(rows.every((row) => row.split(',').length === 7)).toBe(true);
    }));

  it('is refused with the message and the fix of the check, and taken once it is mended', () =>
    inShop(async (served) => {
      const item = hoursItem('Mended', { phase: 'rebuilt' });
      const refused = await sendItem(served, item);
      expect(refused.status).toBe(422);
      expect(JSON.parse(refused.text)).toMatchObject({
        problems: [
          { message: expect.stringContaining('rebuilt'), fix: expect.stringContaining('rebuild') },
        ],
      });
      const mended = { ...item, fields: { ...item.fields, phase: 'rebuild' } };
      expect((await sendItem(served, mended)).status).toBe(200);
      expect((await hoursOf(served)).match(/Mended/g)).toHaveLength(1);
    }));

  it('lets a part grow by a step, in place', () =>
    inShop(async (served) => {
      const item = (fields: Record<string, string>) => ({
        id: newId(),
        project: 'press',
        kind: 'part',
        fields,
      });
      const parts = () => readFile(join(served.content, 'press/ledger/parts.yaml'), 'utf8');
      const before = await parts();
      const grown = await sendItem(served, item({ id: 'nut', got: '2025-04-02' }));
      expect(JSON.parse(grown.text)).toEqual({
        written: [{ file: 'press/ledger/parts.yaml', line: 7, id: 'nut' }],
      });
      expect(await parts()).toBe(`${before}  got: 2025-04-02\n`);
      const again = await sendItem(served, item({ id: 'gib', fitted: '2025-05-01' }));
      expect(again.text).toContain('has \\"2025-04-12\\" there already');
      expect((await sendItem(served, item({ id: 'nott', got: '2025-04-02' }))).status).toBe(422);
    }));

  it('lets a part in a table grow, in the empty cell or in a new column', () =>
    inShop(
      async (served) => {
        const send = (fields: Record<string, string>) =>
          sendItem(served, { id: newId(), project: 'press', kind: 'part', fields });
        expect((await send({ id: 'nut', got: '2025-04-02' })).status).toBe(200);
        expect((await send({ id: 'nut', fitted: '2025-04-03' })).status).toBe(200);
        const text = await readFile(join(served.content, 'press/ledger/parts.csv'), 'utf8');
        expect(text).toBe(
          'id,name,system,source,got,fitted\r\ngib,"Gib, long",ram,spare-press,2025-03-10,\r\nnut,Bronze nut,screw,press,2025-04-02,2025-04-03\r\n',
        );
      },
      {
        'press/ledger/parts.yaml': undefined,
        'press/ledger/parts.csv':
          'id,name,system,source,got\r\ngib,"Gib, long",ram,spare-press,2025-03-10\r\nnut,Bronze nut,screw,press,\r\n',
      },
    ));

  it('keeps of a picture its pixels and the day it was taken', () =>
    inShop(async (served) => {
      const bytes = await sharp({
        create: { width: 60, height: 40, channels: 3, background: 'red' },
      })
        .jpeg()
        .withExif({
          IFD0: { Make: 'Camera of the test' },
          IFD2: { DateTimeOriginal: '2025:04:19 11:12:13' },
          IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' },
        })
        .toBuffer();
      const id = newId();
      const put = await ask(served.host, 'PUT', `/api/pictures/${id}`, {
        headers: { ...ownHeaders(served), 'content-type': 'image/jpeg' },
        body: bytes,
      });
      expect(JSON.parse(put.text)).toEqual({ picture: id, taken: '2025-04-19' });
      const fields = {
        date: '2025-05-02',
        amount: '3.20',
        category: 'material',
        phase: 'rebuild',
        what: 'Rags',
      };
      const item = { id: newId(), project: 'press', kind: 'cost', fields, picture: id };
      expect((await sendItem(served, item)).status).toBe(200);
      const folder = join(served.content, 'press/receipts');
      const [name = ''] = await readdir(folder);
      expect(name).toBe(`2025-05-02-cost-${id.slice(0, 12)}.jpg`);
      const kept = await readFile(join(folder, name));
      const tags = await exifr.parse(kept, { reviveValues: false, gps: true });
      expect(tags.DateTimeOriginal).toMatch(/^2025:04:19 {3}: {2}: *$/);
      expect(JSON.stringify(tags)).not.toMatch(/Camera|GPS|atitude|11:12/);
      const costs = await readFile(join(served.content, 'press/ledger/costs.csv'), 'utf8');
      expect(costs).toContain(name);
    }));

  it('leaves no picture of a row that was refused', () =>
    inShop(async (served) => {
      const id = newId();
      const body = await sharp({
        create: { width: 60, height: 40, channels: 3, background: 'red' },
      })
        .png()
        .toBuffer();
      const headers = { ...ownHeaders(served), 'content-type': 'image/png' };
      await ask(served.host, 'PUT', `/api/pictures/${id}`, { headers, body });
      const fields = {
        date: '2025-05-02',
        amount: 'much',
        category: 'material',
        phase: 'rebuild',
        what: 'Rags',
      };
      const item = { id: newId(), project: 'press', kind: 'cost', fields, picture: id };
      expect((await sendItem(served, item)).status).toBe(422);
      expect(await readdir(join(served.content, 'press/receipts'))).toEqual([]);
      const mended = { ...item, fields: { ...fields, amount: '4.00' } };
      expect((await sendItem(served, mended)).status).toBe(200);
      expect(await readdir(join(served.content, 'press/receipts'))).toHaveLength(1);
    }));
});

function hoursOf({ content }: Served): Promise<string> {
  return readFile(join(content, 'press/ledger/hours.csv'), 'utf8');
}

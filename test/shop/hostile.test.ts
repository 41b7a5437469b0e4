import { readFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { ask, hoursItem, inShop, newId, ownHeaders, type Served, sendItem } from './shop.ts';

const stillUp = async (served: Served) =>
  (await ask(served.host, 'GET', '/api/lists', { headers: ownHeaders(served) })).status === 200;

const filesOf = async ({ content }: Served) =>
  readFile(join(content, 'press/ledger/hours.csv'), 'utf8');

describe('hostile requests', () => {
  it('refuses paths that climb, encoded or not, and any that is not on the list', () =>
    inShop(async (served) => {
      for (const path of [
        '/../../etc/passwd',
        '/..%2f..%2fetc%2fpasswd',
        '/page.css/../../../package.json',
        '/%2e%2e/server.ts',
        '//etc/passwd',
        '/page/start.js',
        '/api/pictures/../../x',
        '/api/lists/../items',
        'http://127.0.0.1/../x',
      ]) {
        const { status, text } = await ask(served.host, 'GET', path);
        expect([path, status]).toEqual([path, 401]);
        expect(text).toBe('{"refused":"token"}');
      }
      expect(await stillUp(served)).toBe(true);
    }));

  it('shows nothing of the ledger without a token, or with a wrong or a long one', () =>
    inShop(async (served) => {
      const wrong = ['', 'x', 'A'.repeat(43), `${served.token}A`, served.token.toLowerCase()];
      for (const token of wrong) {
        const headers = ownHeaders({ ...served, token });
        expect((await ask(served.host, 'GET', '/api/lists', { headers })).status).toBe(401);
        const sent = await ask(served.host, 'POST', '/api/items', {
          headers,
          body: JSON.stringify(hoursItem('x')),
        });
        expect(sent.status).toBe(401);
      }
      const cookie = { cookie: `token=${served.token}` };
      expect((await ask(served.host, 'GET', '/api/lists', { headers: cookie })).status).toBe(401);
    }));

  it('serves the page itself without a token, and it holds nothing but the title of the site', () =>
    inShop(async ({ host }) => {
      const page = await ask(host, 'GET', '/');
      expect(page.status).toBe(200);
      expect(page.headers['content-security-policy']).toContain("default-src 'none'");
      expect(page.headers['access-control-allow-origin']).toBeUndefined();
      for (const path of JSON.parse((await ask(host, 'GET', '/pages.json')).text) as string[]) {
        const { status, text } = await ask(host, 'GET', path);
        expect([path, status]).toEqual([path, 200]);
        expect(text).not.toMatch(/Wendlebury|teardown|h-00|Ines Marlow/);
      }
    }));

  it('refuses other hosts and origins, and says nothing that another site could read', () =>
    inShop(async (served) => {
      const { host } = served;
      const port = host.split(':')[1];
      const own = ownHeaders(served);
      for (const other of [
        'evil.example',
        `evil.example:${port}`,
        '127.0.0.1',
        `127.0.0.1.evil:${port}`,
      ])
        expect((await ask(host, 'GET', '/', { headers: { host: other } })).status).toBe(421);
      const body = JSON.stringify(hoursItem('from elsewhere'));
      for (const origin of [
        'http://evil.example',
        'null',
        `https://${host}`,
        `http://127.0.0.1:${Number(port) + 1}`,
        `http://${host}.evil.example`,
      ]) {
        const answer = await ask(host, 'POST', '/api/items', { headers: { ...own, origin }, body });
        expect([origin, answer.status]).toEqual([origin, 403]);
        const asked = await ask(host, 'OPTIONS', '/api/items', { headers: { origin } });
        expect([origin, asked.status]).toEqual([origin, 403]);
        expect(asked.headers['access-control-allow-origin']).toBeUndefined();
      }
      const { origin: _, ...without } = own;
      expect((await ask(host, 'POST', '/api/items', { headers: without, body })).status).toBe(403);
      const cross = { ...without, 'sec-fetch-site': 'cross-site', 'sec-fetch-mode': 'no-cors' };
      expect((await ask(host, 'GET', '/api/lists', { headers: cross })).status).toBe(403);
      expect(await filesOf(served)).not.toContain('elsewhere');
    }));

  it('refuses a body of 100 MB, announced or not, and JSON over 64 kB', () =>
    inShop(async (served) => {
      const headers = ownHeaders(served);
      const path = `/api/pictures/${newId()}`;
      const large = { ...headers, 'content-length': String(100 * 1024 * 1024) };
      const announced = await ask(served.host, 'PUT', path, { headers: large, body: 'x' });
      expect(announced.status).toBe(413);
      expect([0, 413]).toContain(await stream(served, path, 100));
      const body = JSON.stringify(hoursItem('x'.repeat(70_000)));
      expect((await ask(served.host, 'POST', '/api/items', { headers, body })).status).toBe(413);
      expect(await stillUp(served)).toBe(true);
    }));

  it('refuses what is no item, and writes nothing of it', () =>
    inShop(async (served) => {
      const before = await filesOf(served);
      const good = hoursItem('Good');
      for (const body of [
        '{',
        'null',
        '[]',
        '"x"',
        '\u0000',
        JSON.stringify({ ...good, kind: 'withdrawals' }),
        JSON.stringify({ ...good, kind: 'toString' }),
        JSON.stringify({ ...good, project: '../press' }),
        JSON.stringify({ ...good, id: '../../x' }),
        JSON.stringify({ ...good, fields: { ...good.fields, corrects: 'h-001' } }),
        JSON.stringify({ ...good, fields: { hours: 5 } }),
        JSON.stringify({ ...good, picture: newId() }),
        JSON.stringify({ ...good, more: 1 }),
        `{"__proto__":{"x":1},${JSON.stringify(good).slice(1)}`,
      ]) {
        const answer = await ask(served.host, 'POST', '/api/items', {
          headers: ownHeaders(served),
          body,
        });
        expect([body, answer.status]).toEqual([body, 400]);
      }
      const typed = { ...ownHeaders(served), 'content-type': 'text/plain' };
      const answer = await ask(served.host, 'POST', '/api/items', {
        headers: typed,
        body: JSON.stringify(good),
      });
      expect(answer.status).toBe(415);
      const nowhere = await sendItem(served, { ...good, project: 'nowhere' });
      expect(nowhere.status).toBe(422);
      expect(await filesOf(served)).toBe(before);
    }));

  it('refuses pictures that are none, are cut off, or unfold to more than 100 megapixels', () =>
    inShop(async (served) => {
      const jpeg = await sharp({
        create: { width: 640, height: 480, channels: 3, background: 'red' },
      })
        .jpeg()
        .toBuffer();
      const bad: Record<string, Uint8Array> = {
        text: Buffer.from('<script>alert(1)</script>'),
        svg: Buffer.from(
          '<svg xmlns="http://www.w3.org/2000/svg"><image href="/etc/passwd"/></svg>',
        ),
        empty: Buffer.alloc(0),
        head: Buffer.from('\xff\xd8\xff', 'latin1'),
        cut: jpeg.subarray(0, jpeg.length / 2),
        bomb: blankPng(60_000, 60_000),
      };
      for (const [name, bytes] of Object.entries(bad)) {
        const answer = await putPicture(served, bytes);
        expect([name, answer.status]).toEqual([name, 415]);
      }
      expect((await putPicture(served, jpeg)).status).toBe(200);
      expect(await stillUp(served)).toBe(true);
    }));

  it('drops a body that dawdles, and a head that never ends', () =>
    inShop(async (served) => {
      const [name = '', port] = served.host.split(':');
      const headers = Object.entries(ownHeaders(served)).map(([key, value]) => `${key}: ${value}`);
      const head = ['POST /api/items HTTP/1.1', `host: ${served.host}`, 'content-length: 5000'];
      const start = Date.now();
      const slow = [
        [...head, ...headers, '', '{'].join('\r\n'),
        'GET / HTTP/1.1\r\nhost: x\r\nx-',
      ].map(
        (begun) =>
          new Promise<string>((resolve) => {
            let told = '';
            const socket = connect(Number(port), name, () => socket.write(begun));
            const drip = setInterval(() => socket.write(' '), 500);
            socket.on('data', (part) => {
              told += part;
            });
            socket.on('error', () => {});
            socket.on('close', () => {
              clearInterval(drip);
              resolve(told);
            });
          }),
      );
      expect(await stillUp(served)).toBe(true);
      const [body] = await Promise.all(slow);
      expect(body).toMatch(/^HTTP\/1\.1 408/);
      expect(Date.now() - start).toBeLessThan(30_000);
      expect(await stillUp(served)).toBe(true);
    }));

  it('slows down who asks too fast, and who guesses tokens sooner', () =>
    inShop(async (served) => {
      const statuses: number[] = [];
      for (let i = 0; i < 40; i++)
        statuses.push((await ask(served.host, 'GET', '/api/lists')).status);
      expect(statuses.slice(0, 20).every((status) => status === 401)).toBe(true);
      expect(statuses.slice(25).every((status) => status === 429)).toBe(true);
      const many = await Promise.all(
        Array.from({ length: 300 }, () => ask(served.host, 'GET', '/icon.svg')),
      );
      expect(many.some(({ status }) => status === 429)).toBe(true);
      expect((await ask(served.host, 'GET', '/')).status).not.toBe(0);
    }));
});

function putPicture(served: Served, bytes: Uint8Array, id = newId()) {
  const headers = { ...ownHeaders(served), 'content-type': 'image/jpeg' };
  return ask(served.host, 'PUT', `/api/pictures/${id}`, { headers, body: bytes });
}

/** Sends so many megabytes in pieces without saying how many there will be. */
function stream({ host, token }: Served, path: string, megabytes: number): Promise<number> {
  const [name = '', port] = host.split(':');
  return new Promise((resolve) => {
    let told = '';
    const socket = connect(Number(port), name, () => {
      const lines = Object.entries(ownHeaders({ host, token })).map(([key, is]) => `${key}: ${is}`);
      socket.write(
        [
          `PUT ${path} HTTP/1.1`,
          `host: ${host}`,
          'transfer-encoding: chunked',
          ...lines,
          '',
          '',
        ].join('\r\n'),
      );
      const piece = `100000\r\n${'x'.repeat(1024 * 1024)}\r\n`;
      for (let i = 0; i < megabytes; i++) socket.write(piece);
    });
    socket.on('data', (part) => {
      told += part;
    });
    socket.on('error', () => {});
    socket.on('close', () => resolve(Number(/^HTTP\/1\.1 (\d+)/.exec(told)?.[1] ?? 0)));
  });
}

/** A PNG of one colour, which packs to next to nothing. */
function blankPng(width: number, height: number): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([1, 0, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc((width / 8 + 1) * 3000));
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', head),
    chunk('IDAT', rows),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Uint8Array): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(4);
  frame.writeUInt32BE(data.length);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc(named));
  return Buffer.concat([frame, named, sum]);
}

function crc(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

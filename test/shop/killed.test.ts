import { type ChildProcess, spawn } from 'node:child_process';
import { readdir, readFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import sharp from 'sharp';
import { expect, it, onTestFinished } from 'vitest';
import { checkContent } from '../../src/check/check.ts';
import { readContent } from '../../src/read/content.ts';
import { addPhone } from '../../src/shop/phones.ts';
import { stateFolder } from '../../src/shop/state-folder.ts';
import { type Dirs, inWorkshop } from '../cli/run-command.ts';
import { ask, hoursItem, newId, ownHeaders, sendItem } from './shop.ts';

const KILLS = 45;
const CATEGORIES = ['material', 'tool', 'consumable'];

it(
  'neither loses nor doubles what two phones send while the server is killed again and again',
  { timeout: 400_000 },
  () =>
    inWorkshop({}, async (dirs) => {
      const port = await freePort();
      const host = `127.0.0.1:${port}`;
      const state = stateFolder(dirs.work, dirs.content);
      const picture = await sharp({
        create: { width: 64, height: 48, channels: 3, background: 'grey' },
      })
        .jpeg()
        .toBuffer();
      const server = new Killed(dirs, port, host);
      // A failure in between must not leave a server behind.
      onTestFinished(() => server.end('SIGKILL'));
      const run = { over: false, resent: 0 };
      const paired = await Promise.all(
        ['one', 'two'].map(async (name) => {
          const { token = '' } = (await addPhone(state, name, new Date())) ?? {};
          return { name, host, token };
        }),
      );

      const sending = paired.map(async (phone) => {
        const sent: { readonly what: string; readonly kind: string; readonly stands: string[] }[] =
          [];
        for (let n = 1; !run.over; n++) {
          const what = `Phone ${phone.name} row ${n}`;
          const item = n % 4 === 0 ? costItem(what, n) : hoursItem(what);
          const stands = await untilConfirmed(phone, item, picture, run);
          sent.push({ what, kind: item.kind, stands });
        }
        return sent;
      });
      const kills = await server.killAgainAndAgain(KILLS);
      run.over = true;
      await server.start();
      const all = (await Promise.all(sending)).flat();
      await server.end();

      const lines = await linesOf(dirs, ['hours.csv', 'costs.csv']);
      const times = (what: string) =>
        lines.filter((line) => line.endsWith(what) || line.includes(`${what},`)).length;
      const counts = {
        kills: kills.count,
        whileSending: kills.whileSending,
        confirmed: all.length,
        lost: all.filter(({ what }) => times(what) === 0).length,
        doubled: all.filter(({ what }) => times(what) > 1).length,
        unasked: lines.filter((line) => line.includes('Phone ')).length - all.length,
      };
      expect(counts).toEqual({ ...counts, lost: 0, doubled: 0, unasked: 0 });
      expect(counts.kills).toBe(KILLS);
      expect(counts.confirmed).toBeGreaterThan(KILLS);
      expect(run.resent).toBeGreaterThan(0);
      expect(new Set(all.flatMap(({ stands }) => stands)).size).toBe(all.length);
      for (const { name } of paired) {
        const order = lines.filter(
          (line) => line.includes(`Phone ${name} row`) && line.startsWith('h-'),
        );
        const numbers = order.map((line) => Number(/row (\d+)/.exec(line)?.[1]));
        expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
      }
      const receipts = await readdir(join(dirs.content, 'press/receipts'));
      expect(receipts).toHaveLength(all.filter(({ kind }) => kind === 'cost').length);
      const problems = checkContent(await readContent(dirs.content), new Date());
      expect(problems.filter(({ level }) => level === 'error')).toEqual([]);
      process.stderr.write(`kill test: ${JSON.stringify({ ...counts, resent: run.resent })}\n`);
    }),
);

/** A server in a process of its own that is killed without a warning. */
class Killed {
  readonly #dirs: Dirs;
  readonly #port: number;
  readonly #host: string;
  #child: ChildProcess | undefined;

  constructor(dirs: Dirs, port: number, host: string) {
    this.#dirs = dirs;
    this.#port = port;
    this.#host = host;
  }

  async start(): Promise<void> {
    const { content, work } = this.#dirs;
    // Started as run.mjs starts it, without the process that run.mjs replaces.
    this.#child = spawn(
      process.execPath,
      ['src/cli/run.mjs', 'bench-page', '--port', String(this.#port)],
      {
        env: { ...process.env, WITNESSMARK_CONTENT: content, WITNESSMARK_WORK: work },
        stdio: 'ignore',
      },
    );
    while ((await ask(this.#host, 'GET', '/icon.svg')).status === 0) await wait(10);
  }

  async killAgainAndAgain(times: number) {
    const kills = { count: 0, whileSending: 0 };
    while (kills.count < times) {
      await this.start();
      await wait(Math.random() * 400);
      const before = await lastNote(this.#dirs);
      await this.end('SIGKILL');
      kills.count++;
      if (before === 'taken' || (await lastNote(this.#dirs)) === 'taken') kills.whileSending++;
    }
    return kills;
  }

  async end(signal: NodeJS.Signals = 'SIGTERM'): Promise<void> {
    const child = this.#child;
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill(signal);
    await ended;
  }
}

/** What the journal says last: `taken` is a row that was begun and not ended. */
async function lastNote({ work, content }: Dirs): Promise<string | undefined> {
  const text = await readFile(join(stateFolder(work, content), 'received.jsonl'), 'utf8').catch(
    () => '',
  );
  return /"step":"(\w+)"[^\n]*\n$/.exec(text)?.[1];
}

interface Paired {
  readonly host: string;
  readonly token: string;
}

type Sent = ReturnType<typeof hoursItem> & { readonly picture?: string };

/** Sends an item again and again, its picture first, until the server says where it stands. */
async function untilConfirmed(
  phone: Paired,
  item: Sent,
  picture: Uint8Array,
  run: { resent: number },
): Promise<string[]> {
  for (let tries = 0; ; tries++) {
    if (item.picture) {
      const headers = { ...ownHeaders(phone), 'content-type': 'image/jpeg' };
      const path = `/api/pictures/${item.picture}`;
      const put = await ask(phone.host, 'PUT', path, { headers, body: picture });
      if (put.status !== 200) {
        await wait(20);
        continue;
      }
    }
    const { status, text } = await sendItem(phone, item);
    if (status === 200) {
      if (tries > 0) run.resent++;
      const { written } = JSON.parse(text) as { written: { file: string; id: string }[] };
      return written.map(({ file, id }) => `${file} ${id}`);
    }
    if (status !== 0 && status !== 429 && status !== 503 && status !== 424)
      throw new Error(`${status} ${text}`);
    await wait(20);
  }
}

function costItem(what: string, n: number): Sent {
  return {
    id: newId(),
    project: 'press',
    kind: 'cost',
    fields: {
      date: '2025-05-02',
      amount: '1.50',
      category: CATEGORIES[n % 3] ?? 'tool',
      phase: 'rebuild',
      what,
    } as unknown as Sent['fields'],
    picture: newId(),
  };
}

async function linesOf({ content }: Dirs, names: readonly string[]): Promise<string[]> {
  const texts = await Promise.all(
    names.map((name) => readFile(join(content, 'press/ledger', name), 'utf8')),
  );
  return texts.flatMap((text) => text.split('\n'));
}

function freePort(): Promise<number> {
  const probe = createServer();
  return new Promise((resolve) => {
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      const port = typeof address === 'object' && address ? address.port : 0;
      probe.close(() => resolve(port));
    });
  });
}

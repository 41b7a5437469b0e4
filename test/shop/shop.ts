import { randomBytes } from 'node:crypto';
import { mkdtemp, rm } from 'node:fs/promises';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type OpenShop, openShop } from '../../src/shop/open-shop.ts';
import { addPhone } from '../../src/shop/phones.ts';
import { type Changes, inContentFolder } from '../check/content-folder.ts';

/** A bench page that is served, with one paired phone. */
export interface Served {
  readonly shop: OpenShop;
  readonly content: string;
  readonly state: string;
  readonly token: string;
  /** `127.0.0.1` and the port. */
  readonly host: string;
  /** Of each code used up: by which phone, or none. */
  readonly codes: (string | undefined)[];
}

/** Gives `use` a served bench page of the sound project. */
export function inShop<Result>(
  use: (served: Served) => Promise<Result>,
  changes: Changes = {},
): Promise<Result> {
  return inContentFolder(changes, async (content) => {
    const state = await mkdtemp(join(tmpdir(), 'witnessmark-shop-'));
    const codes: (string | undefined)[] = [];
    const phone = await addPhone(state, 'Test phone', new Date());
    const shop = await openShop({
      contentDir: content,
      state,
      port: 0,
      lan: false,
      now: () => new Date(),
      onCode: (paired) => codes.push(paired),
    });
    try {
      const host = new URL(shop.address).host;
      return await use({ shop, content, state, token: phone?.token ?? '', host, codes });
    } finally {
      await shop.close();
      await rm(state, { recursive: true, force: true });
    }
  });
}

/** What came back. */
export interface Got {
  readonly status: number;
  readonly text: string;
  readonly headers: Readonly<Record<string, unknown>>;
}

/** One request as it is told, whatever a browser would have allowed; status 0 where the connection was cut. */
export function ask(
  host: string,
  method: string,
  path: string,
  { headers = {}, body }: { headers?: Record<string, string>; body?: string | Uint8Array } = {},
): Promise<Got> {
  const [name, port] = host.split(':');
  return new Promise((resolve) => {
    const sent = request(
      { host: name, port, method, path, headers: { host, ...headers }, agent: false },
      (response) => {
        let text = '';
        response.setEncoding('utf8').on('data', (part: string) => {
          text += part;
        });
        response.on('end', () =>
          resolve({ status: response.statusCode ?? 0, text, headers: response.headers }),
        );
        response.on('error', () => resolve({ status: 0, text: '', headers: {} }));
      },
    );
    sent.on('error', () => resolve({ status: 0, text: '', headers: {} }));
    sent.end(body);
  });
}

/** Headers of a paired phone's own page. */
export function ownHeaders({ host, token }: Pick<Served, 'host' | 'token'>) {
  return {
    origin: `http://${host}`,
    authorization: `Bearer ${token}`,
    'content-type': 'application/json',
  };
}

/** Sends an item as the page does. */
export function sendItem(served: Pick<Served, 'host' | 'token'>, item: unknown): Promise<Got> {
  return ask(served.host, 'POST', '/api/items', {
    headers: ownHeaders(served),
    body: JSON.stringify(item),
  });
}

/** An id as a phone makes one. */
export const newId = () => randomBytes(16).toString('hex');

/** Hours as a phone sends them. */
export function hoursItem(what: string, fields: Record<string, string> = {}) {
  return {
    id: newId(),
    project: 'press',
    kind: 'hours',
    fields: { date: '2025-04-20', hours: '0:01', phase: 'rebuild', work: 'fit', what, ...fields },
  };
}

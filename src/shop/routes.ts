import type { IncomingMessage } from 'node:http';
import type { ReadContent } from '../read/content.ts';
import { type Answer, json, refuse } from './answer.ts';
import { type Body, type Limit, readBody } from './body.ts';
import { type Gate, pathOf, tokenOf, turnedAway } from './gate.ts';
import { readItem } from './item.ts';
import { listsOf } from './lists.ts';
import { pageAddresses, pageFile } from './page-files.ts';
import { tryCode } from './pairing.ts';
import { addPhone, type Phone, phoneOf, phonesOf } from './phones.ts';
import { remake } from './picture.ts';
import { Rate } from './rate.ts';
import type { Receiver } from './receive.ts';
import { stage } from './staged.ts';

const JSON_LIMIT: Limit = { bytes: 64 * 1024, ms: 15_000 };
const PICTURE_LIMIT: Limit = { bytes: 25 * 1024 * 1024, ms: 120_000 };

/** What requests are answered from. */
export interface Shop {
  readonly state: string;
  readonly gate: Gate;
  readonly receiver: Receiver;
  readonly content: () => Promise<ReadContent>;
  readonly now: () => Date;
  /** Told when a code was used up, by the phone of this name or by wrong tries. */
  readonly onCode: (paired: string | undefined) => void;
}

/** Answers requests: head, pace, the page itself, pairing; everything else wants a paired phone. */
export function router(shop: Shop) {
  const all = new Rate({ burst: 200, perSecond: 20 });
  const wrong = new Rate({ burst: 20, perSecond: 0.2 });
  const oneByOne = queueOfOne();

  return async (request: IncomingMessage): Promise<Answer> => {
    const away = turnedAway(request, shop.gate);
    if (away) return away;
    const from = request.socket.remoteAddress ?? '';
    const nowMs = shop.now().getTime();
    if (!all.take(from, nowMs)) return refuse(429, 'pace', true);

    const path = pathOf(request);
    if (request.method === 'GET' && !path.startsWith('/api/')) {
      const page = path === '/pages.json' ? json(200, pageAddresses) : await shellFile(shop, path);
      if (page) return page;
    }
    if (!wrong.hasLeft(from, nowMs)) return refuse(429, 'pace', true);
    if (request.method === 'POST' && path === '/api/pair')
      return oneByOne(() => pair(shop, request, () => wrong.take(from, nowMs)));

    const token = tokenOf(request);
    const phone = token && phoneOf(await phonesOf(shop.state), token);
    if (!phone) {
      wrong.take(from, nowMs);
      return refuse(401, 'token', true);
    }
    return forPhone(shop, phone, request, path, oneByOne);
  };
}

async function shellFile(shop: Shop, path: string): Promise<Answer | undefined> {
  if (path !== '/' && path !== '/words.json' && path !== '/page.webmanifest')
    return pageFile(path, { title: '', language: 'en' });
  const site = (await shop.content()).site?.value;
  return pageFile(path, { title: site?.title ?? '', language: site?.language ?? 'en' });
}

async function forPhone(
  shop: Shop,
  phone: Phone,
  request: IncomingMessage,
  path: string,
  oneByOne: OneByOne,
): Promise<Answer> {
  if (request.method === 'GET' && path === '/api/lists')
    return json(200, { phone: phone.name, ...listsOf(await shop.content()) });
  if (request.method === 'POST' && path === '/api/items') return takeItem(shop, phone, request);
  const picture = /^\/api\/pictures\/([a-z0-9]{20,40})$/.exec(path)?.[1];
  if (request.method === 'PUT' && picture) return takePicture(shop, picture, request, oneByOne);
  return refuse(404, 'address', true);
}

async function pair(shop: Shop, request: IncomingMessage, countWrong: () => void): Promise<Answer> {
  const sent = await jsonOf(request);
  if ('refusal' in sent) return sent.refusal;
  const { code, name } = (sent.value ?? {}) as { code?: unknown; name?: unknown };
  if (typeof code !== 'string' || typeof name !== 'string' || code.length > 40 || name.length > 80)
    return refuse(400, 'form');
  const tried = await tryCode(shop.state, code, shop.now());
  if (tried === 'right') {
    const made = await addPhone(shop.state, name, shop.now());
    if (made) shop.onCode(made.name);
    return made ? json(200, { token: made.token, phone: made.name }) : refuse(409, 'phones');
  }
  countWrong();
  if (tried === 'burned') shop.onCode(undefined);
  return refuse(403, tried === 'none' ? 'no-code' : 'code');
}

async function takeItem(shop: Shop, phone: Phone, request: IncomingMessage): Promise<Answer> {
  const sent = await jsonOf(request);
  if ('refusal' in sent) return sent.refusal;
  const item = readItem(sent.value);
  if (item === undefined) return refuse(400, 'form');
  const received = await shop.receiver.receive(phone.name, item, shop.now());
  if ('written' in received) return json(200, { written: received.written });
  if ('refused' in received) return json(422, { problems: received.refused });
  if ('other' in received) return refuse(409, 'other');
  return received.again === 'picture' ? refuse(424, 'picture-first') : refuse(503, 'busy');
}

async function takePicture(
  shop: Shop,
  id: string,
  request: IncomingMessage,
  oneByOne: OneByOne,
): Promise<Answer> {
  const body = await readBody(request, PICTURE_LIMIT);
  if ('refused' in body) return tooMuch(body.refused);
  return oneByOne(async () => {
    const picture = await remake(body.bytes);
    if (picture === undefined) return refuse(415, 'picture');
    return (await stage(shop.state, id, picture.bytes))
      ? json(200, { picture: id, ...(picture.taken ? { taken: picture.taken } : {}) })
      : refuse(507, 'full');
  });
}

/** A body as JSON, or the answer that refuses it. */
async function jsonOf(
  request: IncomingMessage,
): Promise<{ readonly value: unknown } | { readonly refusal: Answer }> {
  if (!/^application\/json\b/.test(request.headers['content-type'] ?? ''))
    return { refusal: refuse(415, 'form', true) };
  const body = await readBody(request, JSON_LIMIT);
  if ('refused' in body) return { refusal: tooMuch(body.refused) };
  try {
    return { value: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(body.bytes)) };
  } catch {
    return { refusal: refuse(400, 'form') };
  }
}

function tooMuch(why: Extract<Body, { refused: string }>['refused']): Answer {
  return why === 'large' ? refuse(413, 'large', true) : refuse(408, 'late', true);
}

type OneByOne = <Result>(work: () => Promise<Result>) => Promise<Result>;

/** Does one piece of work at a time: one picture in memory, one code tried. */
function queueOfOne(): OneByOne {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work);
    last = mine.catch(() => {});
    return mine;
  };
}

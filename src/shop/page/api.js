// Requests to the workshop. The token goes in a header, never in a cookie.
import { kept } from './store.js';

const SHORT = 15000;
const LONG = 130000;

/** Asks the workshop. `status` is 0 where it was not reached. */
async function ask(method, path, { body, type, ms = SHORT, token } = {}) {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), ms);
  try {
    const answer = await fetch(path, {
      method,
      body,
      cache: 'no-store',
      credentials: 'omit',
      signal: stop.signal,
      headers: {
        ...(type ? { 'Content-Type': type } : {}),
        ...(token ? { Authorization: `Bearer ${token}` } : {}),
      },
    });
    return { status: answer.status, value: await answer.json().catch(() => ({})) };
  } catch {
    return { status: 0, value: {} };
  } finally {
    clearTimeout(timer);
  }
}

const asJson = (value) => ({ body: JSON.stringify(value), type: 'application/json' });

export const pairWith = (code, name) => ask('POST', '/api/pair', asJson({ code, name }));

export const askLists = async () => ask('GET', '/api/lists', { token: await kept('token') });

export const sendItem = async (item) =>
  ask('POST', '/api/items', { ...asJson(item), ms: LONG, token: await kept('token') });

export const sendPicture = async (id, bytes, type) =>
  ask('PUT', `/api/pictures/${id}`, { body: bytes, type, ms: LONG, token: await kept('token') });

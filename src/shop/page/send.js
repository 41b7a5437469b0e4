// Sends what waits, one by one in the order it was entered, until the workshop has confirmed each. A refused entry does not hold up those after it.
import { sendItem, sendPicture } from './api.js';
import { updateEntry } from './queue.js';
import { entered } from './store.js';
import { words } from './words.js';

const FIRST_WAIT = 2000;
const LONGEST_WAIT = 300000;

let wait = FIRST_WAIT;
let timer;
let running = false;
let again = false;
const listeners = new Set();

/** Told whether the workshop is reached, and when it no longer knows this phone. */
export const onReach = (listener) => listeners.add(listener);
const tell = (reach) => {
  for (const listener of listeners) listener(reach);
};

/** Starts at once, whatever pause there was. */
export function sendNow() {
  clearTimeout(timer);
  wait = FIRST_WAIT;
  return sendAll();
}

async function sendAll() {
  if (running) {
    again = true;
    return;
  }
  running = true;
  const done = await sendEach().catch(() => false);
  running = false;
  if (again) {
    again = false;
    return sendAll();
  }
  if (done) wait = FIRST_WAIT;
  else {
    // A little chance keeps several phones from knocking in step.
    timer = setTimeout(sendAll, wait * (0.75 + Math.random() / 2));
    wait = Math.min(wait * 2, LONGEST_WAIT);
  }
}

/** True when nothing is left to send. */
async function sendEach() {
  const waiting = (await entered()).filter(
    ({ state }) => state === 'waiting' || state === 'trying',
  );
  for (const entry of waiting) {
    const go = await sendOne(entry);
    if (!go) return false;
  }
  return true;
}

/** True when the next may be sent. */
async function sendOne(entry) {
  const { picture } = entry;
  if (picture && !picture.sent) {
    const { status, value } = await sendPicture(picture.id, picture.bytes, picture.type);
    if (status === 413 || status === 415) return refused(entry, [{ message: sentence(value) }]);
    if (status !== 200) return stopped(status);
    picture.sent = true;
  }
  await updateEntry({ ...entry, state: 'trying' });
  const { id, project, kind, fields } = entry;
  const item = { id, project, kind, fields, ...(picture ? { picture: picture.id } : {}) };
  const { status, value } = await sendItem(item);
  if (status === 200) {
    tell('reached');
    const { picture: _, ...rest } = entry;
    await updateEntry({ ...rest, state: 'sent', stands: value.written, problems: undefined });
    return true;
  }
  if (status === 424 && picture) {
    // The workshop has lost the picture; it is sent again with the next try.
    await updateEntry({ ...entry, picture: { ...picture, sent: false }, state: 'waiting' });
    return false;
  }
  if (status === 422) return refused(entry, value.problems);
  if (status === 400 || status === 409 || status === 413)
    return refused(entry, [{ message: sentence(value) }]);
  return stopped(status);
}

async function refused(entry, problems) {
  tell('reached');
  await updateEntry({ ...entry, state: 'refused', problems });
  return true;
}

function stopped(status) {
  if (status === 401) tell('unpaired');
  else tell(status === 0 ? 'away' : 'reached');
  return false;
}

const sentence = ({ refused: why }) => words.refusals[why] ?? words.refusals.form;

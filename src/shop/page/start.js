// Where the page begins: words, pairing, lists, and which view is shown.
import { askLists } from './api.js';
import { el, say } from './dom.js';
import { enterView } from './enter.js';
import { homeView } from './home.js';
import { keptView } from './kept.js';
import { pairView } from './pair.js';
import { onQueue } from './queue.js';
import { onReach, sendNow } from './send.js';
import { showStatus } from './status.js';
import { entered, forget, keep, kept } from './store.js';
import { loadWords, siteTitle, words } from './words.js';

const state = { entries: [], reach: 'unknown', view: 'home', lists: undefined };
const view = document.getElementById('view');

await loadWords();
document
  .getElementById('head')
  .replaceChildren(el('p', { class: 'site' }, siteTitle), el('p', {}, words.title));
state.entries = await entered().catch(() => {
  say(words.noStore, true);
  return [];
});
if ('serviceWorker' in navigator) navigator.serviceWorker.register('/worker.js').catch(showPlain);
else showPlain();

onQueue((entries) => {
  state.entries = entries;
  status();
  if (state.view === 'kept') show('kept');
});
onReach(async (reach) => {
  if (reach === 'unpaired') {
    await forget('token');
    return begin();
  }
  state.reach = reach;
  return status();
});
addEventListener('online', again);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') again();
});
addEventListener('hashchange', begin);
await begin();

async function begin() {
  const code = /^#pair=([\w-]+)$/.exec(location.hash)?.[1];
  if (code) history.replaceState(null, '', '/');
  status();
  if (!(await kept('token'))) {
    const keptCount = state.entries.filter((entry) => entry.state !== 'sent').length;
    state.view = 'pair';
    view.replaceChildren(pairView({ code, keptCount, done: begin }));
    return;
  }
  state.lists = await kept('lists');
  if (state.lists) await show('home');
  await again();
}

/** Fetches the lists anew and sends what waits; shows the first view when there was none to show before. */
async function again() {
  if (!(await kept('token'))) return;
  const { status: code, value } = await askLists();
  state.reach = code === 0 ? 'away' : 'reached';
  if (code === 401) {
    await forget('token');
    await begin();
    return;
  }
  if (code === 200) {
    const had = state.lists !== undefined;
    state.lists = value;
    await keep('lists', value);
    if (!had) await show('home');
  } else if (!state.lists) view.replaceChildren(el('p', {}, words.noLists));
  status();
  await sendNow();
}

async function show(name, given = {}) {
  if (name === 'kept' && !state.lists) {
    state.view = name;
    view.replaceChildren(keptView(state.entries, { go: show, leave: begin }));
    return;
  }
  const all = state.lists.projects;
  const chosen = given.entry?.project ?? given.timer?.project ?? (await kept('project'));
  const lists = all.find(({ id }) => id === chosen) ?? all[0];
  if (lists === undefined) return view.replaceChildren(el('p', {}, words.noLists));
  const project = lists.id;
  state.view = name;
  const leave = () => show(given.entry ? 'kept' : 'home');
  const made = await viewOf(name, { all, lists, project, leave, ...given });
  view.replaceChildren(made);
  status();
  if (name !== 'home' && name !== 'kept') view.focus();
  if (state.view !== 'kept') scrollTo(0, 0);
}

function viewOf(name, given) {
  if (name === 'home') return homeView({ ...given, go: show, refresh: () => show('home') });
  if (name === 'kept') return keptView(state.entries, { go: show, leave: given.leave });
  return enterView(name, given);
}

async function status() {
  const phone = await kept('phone').catch(() => undefined);
  showStatus({ entries: state.entries, reach: state.reach, phone, go: show });
}

/** Says what does not work where the page was not opened over a secure connection. */
function showPlain() {
  document.getElementById('head').append(el('p', { class: 'small plain' }, words.plain));
}

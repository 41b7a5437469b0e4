// A form as a view: shows it, keeps what was entered, goes back.
import { el, newId, say } from './dom.js';
import { missingIn } from './fields.js';
import { forms } from './forms.js';
import { addEntry, mendEntry } from './queue.js';
import { sendNow } from './send.js';
import { keep, kept } from './store.js';
import { clearTimer } from './timer.js';
import { put, words } from './words.js';

const REMEMBERED = ['phase', 'work', 'category', 'spec', 'state', 'survey', 'part', 'found'];

/** Shows the form of a kind; `entry` is a refused one to be mended, `timer` one that was stopped. */
export async function enterView(kind, { lists, project, entry, timer, leave }) {
  const last = (await kept(`last ${project}`)) ?? {};
  const given = entry?.fields ?? {};
  const made = forms[kind]({ lists, last: last[kind] ?? {}, given, timer });
  const wrong = el('p', { class: 'wrong', role: 'alert', id: newId() });
  const form = el(
    'form',
    { novalidate: true, 'aria-describedby': wrong.id },
    entry?.problems && problemList(entry.problems),
    made.elements,
    entry?.picture && el('p', { class: 'small' }, words.fields.pictureStays),
    wrong,
    el(
      'div',
      { class: 'bar' },
      el('button', { type: 'button', onclick: leave }, words.back),
      el('button', { type: 'submit', class: 'main' }, words.save),
    ),
  );
  made.ready?.(form);
  form.addEventListener('submit', async (event) => {
    event.preventDefault();
    const lack = missingIn(form) ?? made.lacks?.();
    wrong.textContent = lack ?? '';
    if (lack) return;
    const button = form.querySelector('[type=submit]');
    button.disabled = true;
    try {
      await save({ kind, made, form, project, entry, last });
      if (timer) await clearTimer();
    } catch (error) {
      button.disabled = false;
      wrong.textContent = put(words.notSaved, { why: error?.message ?? String(error) });
      return;
    }
    say(words.saved);
    sendNow();
    leave();
  });
  return el('section', {}, el('h1', {}, words.home[kind]), form);
}

async function save({ kind, made, form, project, entry, last }) {
  const data = new FormData(form);
  const file = data.get('picture');
  data.delete('picture');
  const typed = Object.fromEntries([...data].map(([name, value]) => [name, value.trim()]));
  const fields = made.mend?.(typed, form) ?? typed;
  const picture =
    file?.size > 0
      ? { bytes: await file.arrayBuffer(), type: file.type || 'image/jpeg' }
      : undefined;
  if (entry) await mendEntry(entry, { fields, picture });
  else await addEntry({ project, kind, fields, picture });
  const chosen = Object.entries(fields).filter(([name]) => REMEMBERED.includes(name));
  await keep(`last ${project}`, { ...last, [kind]: Object.fromEntries(chosen) });
}

/** What the workshop said is wrong, each with what to type instead. */
export function problemList(problems) {
  return el(
    'ul',
    { class: 'problems' },
    problems.map(({ message, fix }) =>
      el('li', {}, message, fix && el('span', { class: 'fix' }, `→ ${fix}`)),
    ),
  );
}

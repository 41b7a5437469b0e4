// What was entered on this phone, where it is now, and what is wrong with what was refused.
import { el } from './dom.js';
import { problemList } from './enter.js';
import { dropEntry } from './queue.js';
import { sendNow } from './send.js';
import { words } from './words.js';

export function keptView(entries, { go, leave }) {
  const newest = [...entries].reverse();
  const sent = entries.filter(({ state }) => state === 'sent');
  return el(
    'section',
    {},
    el('h1', {}, words.kept.heading),
    newest.length === 0
      ? el('p', {}, words.kept.none)
      : el(
          'ol',
          { class: 'kept' },
          newest.map((entry) => line(entry, go)),
        ),
    entries.length > sent.length &&
      el('button', { type: 'button', class: 'main', onclick: sendNow }, words.kept.sendNow),
    sent.length > 0 &&
      el(
        'button',
        {
          type: 'button',
          onclick: async () => {
            for (const entry of sent) await dropEntry(entry);
          },
        },
        words.kept.forget,
      ),
    el('button', { type: 'button', onclick: leave }, words.back),
  );
}

function line(entry, go) {
  const { kind, state, fields, stands = [], problems = [] } = entry;
  const mayChange = state === 'refused' || state === 'waiting';
  return el(
    'li',
    { class: state },
    el('p', { class: 'entry' }, el('strong', {}, words.home[kind]), ` ${shortly(fields)}`),
    el(
      'p',
      { class: 'where' },
      words.kept.states[state],
      stands.map(({ file, line: at, id }) => [': ', el('code', {}, `${file}:${at}`), ` (${id})`]),
    ),
    problems.length > 0 && problemList(problems),
    // One that was sent and not confirmed may stand in the files already: it can be neither changed nor thrown away.
    mayChange &&
      el(
        'div',
        { class: 'bar' },
        remover(entry),
        state === 'refused' &&
          el(
            'button',
            { type: 'button', class: 'main', onclick: () => go(kind, { entry }) },
            words.kept.mend,
          ),
      ),
  );
}

function remover(entry) {
  let asked = false;
  const button = el(
    'button',
    {
      type: 'button',
      onclick: async () => {
        if (asked) return dropEntry(entry);
        asked = true;
        button.textContent = words.kept.sure;
      },
    },
    words.kept.remove,
  );
  return button;
}

function shortly(fields) {
  return Object.entries(fields)
    .filter(([, value]) => value !== '')
    .map(([, value]) => value)
    .join(' · ');
}

// The first view: the timer, and what can be entered.
import { localMoment, looksForgotten, running, worked } from './clock.js';
import { el, newId, say } from './dom.js';
import { keep } from './store.js';
import { clearTimer, currentTimer, startTimer } from './timer.js';
import { language, put, words } from './words.js';

const KINDS = ['hours', 'cost', 'reading', 'finding', 'part'];

/** How many phases have a button of their own before the rest is folded. */
const SHOWN_PHASES = 3;

export async function homeView({ all, lists, project, go, refresh }) {
  const timer = await currentTimer();
  return el(
    'div',
    {},
    all.length > 1 && projectChoice(all, project, refresh),
    timer ? runningTimer(timer, all, { go, refresh }) : phaseButtons(lists, project, refresh),
    el(
      'section',
      {},
      el('h2', {}, words.home.enter),
      el(
        'div',
        { class: 'grid' },
        KINDS.map((kind) =>
          el('button', { type: 'button', onclick: () => go(kind) }, words.home[kind]),
        ),
      ),
    ),
  );
}

function projectChoice(all, project, refresh) {
  const id = newId();
  const select = el(
    'select',
    {
      id,
      onchange: async () => {
        await keep('project', select.value);
        refresh();
      },
    },
    all.map((one) => el('option', { value: one.id }, one.name)),
  );
  select.value = project;
  return el('div', { class: 'field' }, el('label', { for: id }, words.home.machine), select);
}

function phaseButtons({ phases }, project, refresh) {
  const open = phases.filter(({ finished }) => !finished);
  const first = (open.length > 0 ? open : phases.slice(-SHOWN_PHASES)).slice(0, SHOWN_PHASES);
  const rest = phases.filter((phase) => !first.includes(phase));
  const button = ({ id, name }) =>
    el(
      'button',
      {
        type: 'button',
        class: 'start',
        onclick: async () => {
          await startTimer(project, id);
          refresh();
        },
      },
      put(words.home.start, { phase: name }),
    );
  return el(
    'section',
    {},
    el('h1', {}, words.home.timer),
    first.map(button),
    rest.length > 0 && el('details', {}, el('summary', {}, words.home.other), rest.map(button)),
  );
}

function runningTimer(timer, all, { go, refresh }) {
  const phase = all
    .find(({ id }) => id === timer.project)
    ?.phases.find(({ id }) => id === timer.phase);
  const time = new Date(timer.started).toLocaleString(language, {
    dateStyle: 'medium',
    timeStyle: 'short',
  });
  const shown = el('p', { class: 'time', role: 'timer' }, running(timer.started, Date.now()));
  const tick = setInterval(() => {
    if (!shown.isConnected) clearInterval(tick);
    shown.textContent = running(timer.started, Date.now());
  }, 1000);
  const stop = () => go('hours', { timer: { ...timer, ended: Date.now() } });
  return el(
    'section',
    { class: 'running' },
    el('h1', {}, phase?.name ?? timer.phase),
    shown,
    el('p', {}, put(words.home.running, { time })),
    looksForgotten(timer.started, Date.now())
      ? forgotten(timer, { go, refresh })
      : el('button', { type: 'button', class: 'main stop', onclick: stop }, words.home.stop),
  );
}

/** Nobody works that long: the row gets the end that the builder names, never the moment of the tap. */
function forgotten(timer, { go, refresh }) {
  const id = newId();
  const input = el('input', { type: 'datetime-local', id, min: localMoment(timer.started) });
  input.value = localMoment(Math.min(timer.started + 4 * 3600000, Date.now()));
  const use = () => {
    const ended = new Date(input.value).getTime();
    if (!(ended > timer.started && ended <= Date.now())) return say(words.forgot.wrong, true);
    return go('hours', { timer: { ...timer, ended } });
  };
  return el(
    'div',
    {},
    el('h2', {}, words.forgot.heading),
    el('p', {}, put(words.forgot.lead, { time: worked(timer.started, Date.now()) })),
    el('div', { class: 'field' }, el('label', { for: id }, words.forgot.end), input),
    el('button', { type: 'button', class: 'main', onclick: use }, words.forgot.use),
    el(
      'button',
      {
        type: 'button',
        onclick: async () => {
          await clearTimer();
          refresh();
        },
      },
      words.forgot.discard,
    ),
  );
}

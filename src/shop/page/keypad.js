// A keypad for readings: large keys, a line that shows the values and the unit, and the phone's own keyboard stays away.
import { el } from './dom.js';
import { language, words } from './words.js';

const POINT = new Intl.NumberFormat(language).format(1.5).charAt(1);

/** A keypad. `values` are those there already; `value()` gives them as a row has them. */
export function keypad(values = '') {
  let done = values === '' ? [] : values.split(' ').slice(0, -1);
  let now = values === '' ? '' : values.split(' ').at(-1);
  let unit = '';
  const line = el('output', { class: 'shown', 'aria-live': 'polite' });
  const show = () => {
    const local = (text) => text.replace('.', POINT);
    line.replaceChildren(
      ...done.map((value) => el('span', { class: 'done' }, local(value))),
      el('strong', {}, local(now) || '–'),
      el('span', { class: 'unit' }, unit),
    );
  };
  const press = {
    point: () => {
      if (!now.includes('.')) now = now === '' || now === '-' ? `${now}0.` : `${now}.`;
    },
    minus: () => {
      now = now.startsWith('-') ? now.slice(1) : `-${now}`;
    },
    back: () => {
      if (now === '' && done.length > 0) now = done.pop();
      else now = now.slice(0, -1);
    },
    next: () => {
      if (!/\d$/.test(now)) return;
      done = [...done, now];
      now = '';
    },
  };
  const digit = (key) => {
    if (now.length < 12) now += key;
  };
  const key = (text, work, label, wide) =>
    el(
      'button',
      {
        type: 'button',
        class: wide ? 'key wide' : 'key',
        'aria-label': label,
        onclick: () => {
          work();
          show();
        },
      },
      text,
    );
  const digits = ['7', '8', '9', '4', '5', '6', '1', '2', '3'].map((one) =>
    key(one, () => digit(one)),
  );
  const pad = el(
    'div',
    { class: 'pad', role: 'group', 'aria-label': words.keys.pad },
    digits,
    key(POINT, press.point, words.keys.point),
    key('0', () => digit('0')),
    key('−', press.minus, words.keys.minus),
    key('⌫', press.back, words.keys.back),
    key(words.keys.next, press.next, undefined, true),
  );
  pad.addEventListener('keydown', ({ key: pressed }) => {
    if (/^\d$/.test(pressed)) digit(pressed);
    else if (pressed === '.' || pressed === ',') press.point();
    else if (pressed === '-') press.minus();
    else if (pressed === 'Backspace') press.back();
    else return;
    show();
  });
  show();
  return {
    element: el('div', { class: 'keypad' }, line, pad),
    value: () => [...done, ...(/\d$/.test(now) ? [now] : [])].join(' '),
    setUnit: (next) => {
      unit = next;
      show();
    },
  };
}

// Labelled fields, large enough for gloves.
import { dayOf } from './clock.js';
import { el, newId } from './dom.js';
import { put, words } from './words.js';

/** A label and what it labels. */
function labelled(text, input, note) {
  const id = newId();
  input.id = id;
  if (note) input.setAttribute('aria-describedby', `${id}-note`);
  return el(
    'div',
    { class: 'field' },
    el('label', { for: id }, text),
    input,
    note && el('p', { class: 'small', id: `${id}-note` }, note),
  );
}

/** One of a list; `options` are pairs of value and name. */
export function choice(name, label, options, value, { optional = false, onchange } = {}) {
  const select = el(
    'select',
    { name, onchange, 'data-label': label, required: !optional },
    (optional || value === undefined) && el('option', { value: '' }, words.fields.nothing),
    options.map(([key, text]) => el('option', { value: key }, text)),
  );
  select.value = value ?? '';
  return labelled(label, select);
}

/** One of a few, each a button of its own. */
export function few(name, label, options, value) {
  return el(
    'fieldset',
    { class: 'few' },
    el('legend', {}, label),
    options.map(([key, text]) => {
      const id = newId();
      return el(
        'div',
        {},
        el('input', { type: 'radio', name, id, value: key, checked: key === value }),
        el('label', { for: id }, text),
      );
    }),
  );
}

/** Text of one line or of several. */
export function text(name, label, value = '', { lines = 1, optional = false, mode } = {}) {
  const given = { name, 'data-label': label, required: !optional, autocomplete: 'off' };
  const input =
    lines > 1
      ? el('textarea', { ...given, rows: lines })
      : el('input', { ...given, type: 'text', inputmode: mode });
  input.value = value;
  return labelled(label, input, lines > 1 ? words.fields.speak : undefined);
}

/** The day; today unless it is changed. */
export function day(value = dayOf(Date.now())) {
  const input = el('input', { type: 'date', name: 'date', required: true });
  input.setAttribute('data-label', words.fields.date);
  input.value = value;
  return labelled(words.fields.date, input);
}

/** A picture from the camera or the gallery. */
export function picture(label, note) {
  const shown = el('img', { class: 'shot', alt: '', hidden: true });
  const input = el('input', {
    type: 'file',
    name: 'picture',
    accept: 'image/jpeg,image/png,image/webp,image/avif',
    onchange: () => {
      const [file] = input.files;
      shown.hidden = !file;
      if (file) shown.src = URL.createObjectURL(file);
    },
  });
  return el('div', {}, labelled(label, input, note), shown);
}

/** Less used fields, folded. */
export const more = (...fields) => el('details', {}, el('summary', {}, words.fields.more), fields);

/** The first required field of a form that is empty, as a sentence; it gets the focus. */
export function missingIn(form) {
  const empty = [...form.elements].find(
    (field) => field.required && field.value.trim() === '' && !field.disabled,
  );
  empty?.closest('details')?.setAttribute('open', '');
  empty?.focus();
  return empty && put(words.missing, { field: empty.dataset.label ?? empty.name });
}

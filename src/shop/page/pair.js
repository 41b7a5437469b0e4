// Pairing: the code that the workshop printed, typed or brought along by the QR code behind the `#`, where no server logs it.
import { pairWith } from './api.js';
import { el, newId } from './dom.js';
import { askToPersist, keep } from './store.js';
import { put, words } from './words.js';

const WHY = { 403: 'wrong', 409: 'phones' };

export function pairView({ code, keptCount, done }) {
  const { pair } = words;
  const wrong = el('p', { class: 'wrong', role: 'alert' });
  const codeId = newId();
  const nameId = newId();
  const codeInput = el('input', {
    id: codeId,
    name: 'code',
    required: true,
    autocomplete: 'off',
    autocapitalize: 'characters',
    spellcheck: 'false',
    maxlength: 12,
  });
  codeInput.value = code ?? '';
  const nameInput = el('input', {
    id: nameId,
    name: 'name',
    required: true,
    maxlength: 30,
    autocomplete: 'off',
  });
  nameInput.value = usualName();
  const form = el(
    'form',
    {
      onsubmit: async (event) => {
        event.preventDefault();
        const { status, value } = await pairWith(codeInput.value, nameInput.value);
        if (status !== 200) {
          const why = value.refused === 'no-code' ? 'none' : WHY[status];
          wrong.textContent = pair[why] ?? words.status.away;
          return;
        }
        await keep('token', value.token);
        await keep('phone', value.phone);
        await askToPersist();
        done();
      },
    },
    el('div', { class: 'field' }, el('label', { for: codeId }, pair.code), codeInput),
    el('div', { class: 'field' }, el('label', { for: nameId }, pair.name), nameInput),
    wrong,
    el('button', { type: 'submit', class: 'main' }, pair.button),
  );
  return el(
    'section',
    {},
    el('h1', {}, pair.heading),
    keptCount > 0 &&
      el('p', { class: 'wrong' }, `${pair.gone} ${put(pair.kept, { count: keptCount })}.`),
    el('p', {}, pair.lead),
    form,
  );
}

function usualName() {
  return /iPhone|iPad|Android/.exec(navigator.userAgent)?.[0] ?? 'phone';
}

// The title block at the foot: how much is on the phone, how much is in the files, and whether the workshop is reached.
import { el } from './dom.js';
import { countOf } from './queue.js';
import { words } from './words.js';

export function showStatus({ entries, reach, phone, go }) {
  const { kept, refused, sent } = countOf(entries);
  const { status } = words;
  const cell = (name, value, id) =>
    el('div', {}, el('dt', {}, name), el('dd', { id }, String(value)));
  document
    .getElementById('status')
    .replaceChildren(
      el(
        'dl',
        { 'aria-label': status.label },
        cell(status.kept, kept, 'count-kept'),
        refused > 0 && cell(status.refused, refused, 'count-refused'),
        cell(status.sent, sent, 'count-sent'),
        cell(
          `${status.workshop}${phone ? ` (${phone})` : ''}`,
          status[reach] ?? status.unknown,
          'reach',
        ),
      ),
      el('button', { type: 'button', onclick: () => go('kept') }, status.show),
    );
}

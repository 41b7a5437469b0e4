// The five forms. Each gives its fields, by the names that rows have; the workshop checks them as it checks files.
import { dayOf, worked } from './clock.js';
import { choice, day, few, more, picture, text } from './fields.js';
import { keypad } from './keypad.js';
import { nameOf, put, words } from './words.js';

const pairs = (list) => list.map(({ id, name }) => [id, name]);
const own = (group, list) => list.map((key) => [key, nameOf(group, key)]);

/** Phases not finished first; a finished one may still be meant. */
const phasesOf = ({ phases }) =>
  pairs([...phases].sort((a, b) => Number(a.finished) - Number(b.finished)));

/** The phase that is worked on, most likely: the first that is not finished. */
const likelyPhase = ({ phases }) => phases.find(({ finished }) => !finished)?.id;

/** Fields of each kind: what there is to choose (`lists`), what was chosen last (`last`), and what stands there already (`given`). */
export const forms = {
  hours({ lists, last, given, timer }) {
    const { fields } = words;
    const length = timer ? worked(timer.started, timer.ended) : given.hours;
    return {
      elements: [
        text('hours', fields.hours, length, { mode: 'text' }),
        choice(
          'phase',
          fields.phase,
          phasesOf(lists),
          given.phase ?? timer?.phase ?? last.phase ?? likelyPhase(lists),
        ),
        choice(
          'work',
          fields.work,
          lists.work.map((id) => [id, id]),
          given.work ?? last.work,
        ),
        text('what', fields.what, given.what, { lines: 3 }),
        more(
          day(given.date ?? dayOf(timer?.started ?? Date.now())),
          choice('who', fields.who, pairs(lists.people), given.who, { optional: true }),
        ),
      ],
    };
  },

  cost({ lists, last, given }) {
    const { fields } = words;
    const label = put(fields.amount, { currency: lists.currency });
    return {
      elements: [
        text('amount', label, given.amount, { mode: 'decimal' }),
        text('what', fields.what, given.what, { lines: 2 }),
        choice(
          'category',
          fields.category,
          own('categories', lists.categories),
          given.category ?? last.category,
        ),
        choice(
          'phase',
          fields.phase,
          phasesOf(lists),
          given.phase ?? last.phase ?? likelyPhase(lists),
        ),
        picture(fields.receipt, fields.receiptNote),
        more(
          day(given.date),
          choice('parts', fields.parts, pairs(lists.parts), given.parts, { optional: true }),
          text('supplier', fields.supplier, given.supplier, { optional: true }),
        ),
      ],
      // A comma is what many keypads offer; a row has a point.
      mend: (values) => ({ ...values, amount: values.amount.replace(/^(\d+),(\d+)$/, '$1.$2') }),
    };
  },

  reading({ lists, last, given }) {
    const { fields } = words;
    const pad = keypad(given.values);
    const specOf = (form) => lists.specs.find(({ id }) => id === form.elements.spec.value);
    const unitFor = (spec) => spec?.last?.unit ?? spec?.unit ?? '';
    const suit = (form) => {
      const spec = specOf(form);
      const fitting = lists.instruments.filter(
        ({ quantity }) => spec === undefined || quantity === spec.quantity,
      );
      const select = form.elements.instrument;
      select.replaceChildren(...fitting.map(({ id, name }) => new Option(name, id)));
      const usual = given.instrument ?? spec?.last?.instrument;
      if (fitting.some(({ id }) => id === usual)) select.value = usual;
      pad.setUnit(unitFor(spec));
    };
    const spec = given.spec ?? last.spec;
    return {
      elements: [
        choice('spec', fields.spec, pairs(lists.specs), spec, {
          onchange: ({ target }) => suit(target.form),
        }),
        pad.element,
        choice('instrument', fields.instrument, pairs(lists.instruments), undefined),
        few(
          'state',
          fields.state,
          own('states', ['as-found', 'before', 'after', 'final']),
          given.state ?? last.state ?? 'as-found',
        ),
        picture(fields.photo, fields.photoNote),
        more(
          text('conditions', fields.conditions, given.conditions, { lines: 2, optional: true }),
          text('note', fields.note, given.note, { lines: 2, optional: true }),
          day(given.date),
        ),
      ],
      ready: suit,
      mend: (values, form) => ({ ...values, values: pad.value(), unit: unitFor(specOf(form)) }),
      lacks: () =>
        pad.value() === '' ? put(words.missing, { field: words.fields.values }) : undefined,
    };
  },

  finding({ lists, last, given }) {
    const { fields } = words;
    return {
      elements: [
        choice('part', fields.part, pairs(lists.parts), given.part ?? last.part),
        choice('found', fields.found, own('found', lists.found), given.found ?? last.found),
        text('note', fields.note, given.note, { lines: 4, optional: true }),
        picture(fields.photo, fields.photoNote),
        text('place', fields.place, given.place, { optional: true }),
        choice(
          'survey',
          fields.survey,
          pairs(lists.surveys),
          given.survey ?? last.survey ?? lists.surveys.at(-1)?.id,
        ),
        more(day(given.date)),
      ],
    };
  },

  part({ lists, given }) {
    const { fields } = words;
    const open = lists.parts.filter(({ id, fitted }) => !fitted || id === given.id);
    const step = given.fitted ? 'fitted' : 'got';
    return {
      elements: [
        choice('id', fields.part, pairs(open), given.id),
        few(
          'step',
          fields.step,
          [
            ['got', fields.got],
            ['fitted', fields.fitted],
          ],
          step,
        ),
        day(given.got ?? given.fitted),
      ],
      mend: ({ id, step: taken, date }) => ({ id, [taken]: date }),
    };
  },
};

import type { Words } from '../keys.ts';
import { choices } from './parts/choices.ts';
import { hunts } from './parts/hunts.ts';
import { part } from './parts/part.ts';
import { survey } from './parts/survey.ts';

const partsOf = (count: number) => (count === 1 ? '1 Teil' : `${count} Teile`);
const massOf = (weighed: number) =>
  weighed === 1
    ? 'Masse von 1 Teil mit bekannter Masse, mal Stückzahl'
    : `Summe aus ${weighed} Teilen mit bekannter Masse, jeweils mal Stückzahl`;

export const parts: Words['parts'] = {
  part,
  survey,
  choices,
  hunts,
  states: {
    noted: 'vermerkt',
    wanted: 'gesucht',
    ordered: 'bestellt',
    'in-hand': 'vorhanden',
    fitted: 'eingebaut',
    scrapped: 'verschrottet',
    sold: 'verkauft',
  },
  list: {
    title: 'Teile',
    description: (project) =>
      `Jedes Teil von ${project}: sein Stand, was daran gemacht und wie danach gesucht wurde.`,
    document: 'Teileliste',
    count: (count) => `${partsOf(count)}.`,
    byState: 'Nach Stand',
    prepared: 'Vorbereitet, hier oder außer Haus',
    placesPrivate: 'Wohin Teile gegeben wurden, wird nicht veröffentlicht.',
    searchesPrivate:
      'Wo nach einem Teil gesucht wurde, wird nicht veröffentlicht; was dabei herauskam, schon.',
    fittedInOrder: 'Eingebaut, der Reihe nach',
    system: 'Baugruppe',
    state: 'Stand',
    since: 'Seit',
    massEach: 'Masse je Stück',
  },
  preparations: {
    label: 'Vorbereitungen',
    begun: 'Begonnen',
    parts: 'Teile',
    where: 'Wo',
    backOrDone: 'Zurück oder fertig',
    took: 'Dauer',
    sentOut: 'außer Haus',
    here: 'hier',
    notYet: 'noch nicht',
    due: (day) => `fällig am ${day}`,
    dueAndOverdue: (day, days) =>
      `fällig am ${day}, ${days === 1 ? '1 Tag' : `${days} Tage`} überfällig`,
    kinds: {
      blasting: 'Strahlen',
      coating: 'Beschichten',
      machining: 'spanende Bearbeitung',
      welding: 'Schweißen',
      repair: 'Instandsetzung',
      test: 'Prüfung',
      other: 'Sonstiges',
    },
  },
  sources: {
    title: 'Woher alles stammt',
    description: (project) =>
      `Welcher Anteil von ${project} von welcher Maschine stammt, gekauft oder selbst gemacht wurde: nach Stückzahl, Masse und Geld.`,
    document: 'Herkunft',
    lead: (count) =>
      `${partsOf(count)} bekannt; gezählt sind hier die eingebauten und die vorhandenen. Was nur gesucht wird, verkauft oder verschrottet ist, steht {list} und weiter unten.`,
    inTheList: 'in der Teileliste',
    count: (count) => `${partsOf(count)}.`,
    donorCost: 'Was sie wirklich gekostet hat',
    shares: 'Anteile nach Herkunft',
    pieces: 'Stück',
    mass: 'Masse',
    money: 'Geld',
    all: 'Alles',
    none: 'keiner Herkunft zugeordnet',
    caption: ({ day, pieces, mass, money }) =>
      `Stand ${day}. Stück: ${pieces}. Masse: ${mass}. Geld: ${money}.`,
    drawing: (count) =>
      count === 1
        ? 'Anteile von 1 Herkunft nach Stückzahl, Masse und Geld.'
        : `Anteile von ${count} Herkünften nach Stückzahl, Masse und Geld.`,
    bars: { pieces: 'Stück', mass: 'Masse', money: 'Geld' },
    howPieces: (count) =>
      `Stückzahl von ${count} ${count === 1 ? 'Teil' : 'Teilen'}, eingebaut oder vorhanden`,
    howMass: massOf,
    howMassWithout: (weighed, without) =>
      `${massOf(weighed)}; ${without} ohne bekannte Masse nicht mitgezählt`,
  },
};

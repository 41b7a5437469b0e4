import type { Words } from '../../keys.ts';

const partsRule =
  'Die wahren Kosten sind die eigenen Kosten und der Anteil an einer Spendermaschine; gespart ist der Neupreis abzüglich dieser. Preise gelten für alle Stücke einer Zeile zusammen.';

export const partCosts: Words['money']['partCosts'] = {
  title: 'Kosten nach Teil',
  description: (project) =>
    `Was jedes Teil von ${project} wirklich gekostet hat, samt seinem Anteil an einer Spendermaschine.`,
  document: 'Kosten nach Teil',
  lead: 'Von {spent} Ausgaben stecken {inParts} in {parts}.',
  count: (count) => (count === 1 ? '1 Teil' : `${count} Teilen`),
  whoBears: 'Wer die Kosten trägt',
  bearingRule:
    'Jede Zeile wird einmal getragen. Eine Maschine trägt, was für sie als Ganzes bezahlt wurde (Maschine, Transport, Gebühr), ihre Zeilen ohne Teil und was verkauft oder als Schrott abgegeben wurde; die Nettokosten einer Spendermaschine gehen dann nach angegebenem Wert auf ihre Teile über. Jede andere Zeile, die Teile nennt, gehört diesen, aufgeteilt wie angegeben.',
  bearers: {
    parts: 'Teile, nach den Zeilen, die sie nennen',
    machine: (machine) => `${machine}, abzüglich des davon Verkauften`,
    shared: (donor) => `${donor}, auf die Teile daraus verteilt`,
    notShared: (donor) => `${donor}, auf kein Teil verteilt`,
    rest: 'Weder ein Teil noch eine Maschine',
  },
  parts: 'Teile',
  partsRule,
  partsRuleLeftOut: (count) =>
    `${partsRule} Ausgelassen: ${count}, ${count === 1 ? 'das selbst nichts gekostet hat' : 'die selbst nichts gekostet haben'}.`,
  label: 'Kosten jedes Teils',
  trueCost: 'Wahre Kosten',
  newPrice: 'Neupreis',
  saved: 'Gespart',
  ownCosts: 'Eigene Kosten',
  donorShare: 'Anteil am Spender',
  shareOf: (whole) => `Anteil an ${whole}`,
  shareOfDonor: (donor) => `Anteil an ${donor}`,
  together: (total, how) => `Zusammen ${total}: ${how}. {all}`,
  togetherWithDonor: (total, how) =>
    `Zusammen ${total}: ${how}, und der Anteil an der Spendermaschine. {all}`,
  all: 'Kosten aller Teile',
};

import type { Words } from '../../keys.ts';

export const donor: Words['money']['donor'] = {
  description: (donor) =>
    `Was ${donor} gekostet hat, was davon verkauft wurde und was jedes Teil daraus wirklich gekostet hat.`,
  document: 'Abrechnung der Spendermaschine',
  lead: (how) => `Nettokosten {total}, ${how}. {note}`,
  drawingTitle: (donor, net) => `${donor}, vom Kaufpreis bis zu den Nettokosten, ${net}.`,
  drawn: 'Breite Linie: bezahlt und eingenommen.',
  drawnWithEstimate:
    'Breite Linie: bezahlt und eingenommen. Gestrichelt: geschätzt, nicht mitgezählt.',
  account: 'Abrechnung',
  accountRule:
    'Die Abrechnung enthält jede Zeile dieser Maschine, die das Ganze betrifft (Maschine, Transport, Gebühr), die Zeilen ohne Teil und was verkauft oder als Schrott abgegeben wurde. Eine Zeile für die Arbeit an einem schon ausgebauten Teil gehört zu dessen eigenen Kosten und steht nicht hier.',
  label: 'Abrechnung der Spendermaschine',
  line: 'Posten',
  lines: {
    bought: 'Gekauft',
    carriage: 'Transport',
    other: 'Sonstige Kosten des Zerlegens',
    sold: 'Verkauft',
    scrap: 'Als Schrott abgegeben',
    back: 'Erstattungen und Pfand zurück',
  },
  scrap: (mass, price) => `${mass}, ${price} je Kilogramm`,
  net: 'Nettokosten',
  stillToSell: 'Noch zu verkaufen',
  stillToSellEstimate: 'Noch zu verkaufen, geschätzt',
  estimate: 'geschätzt, nicht mitgezählt',
  noPrice: 'noch kein Preis',
  hours: 'Aufgewendete Stunden',
  labour: (value, hours, rate) =>
    `${value} für ${hours} eigene Arbeit zu ${rate} je Stunde; nicht im Geld enthalten`,
  shares: 'Was jedes Teil gekostet hat',
  sharesRule:
    'Die Nettokosten verteilen sich auf die vorhandenen und eingebauten Teile im Verhältnis ihrer angegebenen Werte, also dessen, was jedes beim Ausbau eingebracht hätte; was beim Runden übrig bleibt, geht an die größten Reste. Gespart ist der Neupreis abzüglich der wahren Kosten. Alle Preise gelten für die Stücke einer Zeile zusammen.',
  noShares:
    'Für kein Teil dieser Maschine ist ein Wert angegeben, daher werden ihre Nettokosten nicht auf die Teile verteilt.',
  withoutValue: 'Ohne angegebenen Wert und daher ohne Anteil: {parts}.',
  everyPart: 'Was jedes Teil des Projekts gekostet hat',
  sharesLabel: 'Anteile an den Nettokosten',
  statedValue: 'Angegebener Wert',
  share: 'Anteil',
  all: 'Alle',
  inEntry: (donor) => `Abrechnung: ${donor}`,
  caption: (donor, day) => `${donor}, Stand ${day}`,
  today: '{account}, und was jedes Teil daraus gekostet hat.',
  accountToday: 'Die Abrechnung von heute',
};

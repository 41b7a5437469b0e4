import type { Words } from '../../keys.ts';

export const ofTable: Words['marks']['columns']['ofTable'] = {
  entries: { id: 'Name der Seite' },
  rows: { id: 'Kennung der Zeile', kind: 'Tabelle, in der sie steht' },
  spec_inputs: { name: 'Name in der Formel oder Berechnung' },
  people: { name: 'öffentlicher Name' },
  costs: {
    phase: 'Phase, die alles trägt; sind es mehrere, stehen sie in cost_phases',
  },
  cost_phases: { phase: 'Phase, die sie trägt' },
  hours: { source: 'Maschine, an der gearbeitet wurde, wenn es nicht die im Aufbau ist' },
  rates: {
    source: 'wo der Kurs abgelesen wurde',
    rate: 'wie viele der zweiten Währung eine der ersten ist',
  },
  findings: {
    source:
      'Maschine, von der die Ausführung des Teils stammt, wenn es nicht die Herkunft des Teils selbst ist',
    photo: 'Datei in photos/, die ihn zeigt',
    found: 'was gefunden wurde',
  },
  readings: {
    because: 'warum Werte ausgeschlossen sind oder warum sie die frühere Messung ersetzt',
  },
  groups: { because: 'warum sie zusammengehören und was daraus folgt' },
  choices: { because: 'warum' },
  withdrawals: { because: 'warum sie nicht mehr zählt' },
  cost_parts: { part: 'Teil, das sie trägt' },
  order_parts: { part: 'Teil' },
  group_parts: { part: 'Teil' },
  preparation_parts: { part: 'Teil' },
  entry_moments: { part: 'Teil, um das es geht', spec: 'Kennwert, um den es geht' },
  reading_values: { value: 'in der Einheit der Messung' },
  candidates: {
    value: 'angesetzter Wert eines Teils der Spendermaschine, nach dem es seinen Anteil trüge',
  },
  entry_tells: { row: 'Zeile' },
};

import type { Words } from '../keys.ts';
import { entry } from './log/entry.ts';
import { project } from './log/project.ts';
import { rows } from './log/rows.ts';
import { sharing } from './log/sharing.ts';

export const log: Words['log'] = {
  project,
  entry,
  rows,
  sharing,
  added: 'Mit diesem Eintrag',
  money: 'Geld',
  partsFitted: 'Eingebaute Teile',
  readings: 'Messungen',
  runningTotal: 'Stand bis hier',
  runningTotals: 'Summen bis zu diesem Tag',
  totals: 'Summen',
  list: {
    title: 'Bautagebuch',
    description: (project) => `Alle Einträge im Bautagebuch von ${project}, der Reihe nach.`,
    document: 'Bautagebuch',
    lead: (count) => (count === 1 ? '1 Eintrag.' : `${count} Einträge, der älteste zuerst.`),
  },
  home: {
    description: (builder) => `Bautagebücher von ${builder}`,
    document: 'Verzeichnis der Projekte',
    finished: 'Fertiggestellt',
    asOf: 'Stand',
    entries: 'Einträge',
    latest: 'Neueste Einträge',
  },
  contact: {
    none: 'Für Antworten ist keine Adresse angegeben.',
    write: 'Ein solches Teil vorhanden oder gesucht? Nachricht an {contact}.',
  },
};

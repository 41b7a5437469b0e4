import type { Words } from '../keys.ts';
import { chapters } from './dossier/chapters.ts';
import { identity } from './dossier/identity.ts';
import { rows } from './dossier/rows.ts';

export const dossier: Words['dossier'] = {
  chapters,
  identity,
  rows,
  title: 'Dossier',
  description: (project) =>
    `Ein Dokument über ${project}: Fundzustand, Arbeiten, Teile, Kennwerte, Kosten und Prüfmarken, zum Drucken.`,
  heading: (project) => `${project}: Dossier`,
  contents: 'Inhalt',
  page: 'Seite {page} von {pages}',
  cover: {
    owner: 'Eigentümer',
    document: 'Dokument',
    title: 'Titel',
    machine: 'Maschine',
    number: 'Nummer',
    asOf: 'Stand',
    marked: 'Prüfmarke',
    notMarked: 'ohne Prüfmarke',
    root: 'Wurzel',
    address: 'Adresse',
    privateCopy:
      'Private Ausfertigung: Sie zeigt Kennnummern vollständig und ist nicht zur Veröffentlichung bestimmt.',
    caution:
      'Dies sind die eigenen Aufzeichnungen des Erbauers, bestimmt für Käufer, Versicherer oder Prüfer. Die Werte hat der Erbauer ermittelt und aufgeschrieben; sie sind weder Zulassung noch Prüfung noch Wertgutachten. Alles, wovon die Sicherheit abhängt, muss eine fachkundige Person prüfen. Maßgebend sind die örtlichen Vorschriften und die dafür zugelassenen Fachleute.',
  },
  sections: {
    machine: 'Die Maschine',
    identity: 'Identität und Papiere',
    condition: 'Fundzustand',
    decisions: 'Entscheidungen',
    work: 'Arbeiten nach Phasen',
    parts: 'Teile und ihre Herkunft',
    specs: 'Kennwerte',
    money: 'Geld',
    donors: 'Abrechnung der Spendermaschinen',
    corrections: 'Berichtigungen',
    marks: 'Prüfmarken',
    instruments: 'Messmittel',
    open: 'Offene Punkte',
    hazards: 'Im Bautagebuch genannte Gefahren',
    photos: 'Fotos',
    references: 'Wie ein Verweis nachzuschlagen ist',
  },
  open: {
    none: 'Keine, soweit das Werkstattbuch davon weiß.',
    label: 'Offene Punkte',
    why: 'Warum offen',
    since: 'Seit',
    where: 'Wo',
    expected: (why, day) => `${why}, erwartet ${day}`,
    phase: (state) => `Phase ${state}`,
    notMeasured: 'nicht gemessen',
    noVerdict: 'kein Urteil, da die Messunsicherheit nicht bekannt ist',
    doesNotMeet: 'hält seine Grenzen nicht ein',
    undecided: 'unentschieden: Die Grenze liegt innerhalb von ± U',
    target: {
      'not reached': 'das Ziel ist nicht erreicht',
      undecided: 'das Ziel ist unentschieden',
    },
    wanted: (searches) => `gesucht, bisher ${searches === 1 ? '1 Suche' : `${searches} Suchen`}`,
    waitedFor: 'wird erwartet',
    sentOut: 'außer Haus',
    overdue: (why) => `${why}, überfällig`,
  },
};

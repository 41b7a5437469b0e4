import type { Words } from '../keys.ts';

export const photos: Words['photos'] = {
  gallery: {
    title: 'Fotos',
    description: (name) => `Fotos von ${name}, nach Phase, Teil und Stelle.`,
    lead: (count) =>
      `${count === 1 ? '1 Foto' : `${count} Fotos`}. Die Originale bleiben zu Hause; was veröffentlicht wird, ist kleiner und sagt weder wo noch womit es aufgenommen wurde.`,
    byPhase: 'Nach Phase',
    noPhase: 'Ohne Phase',
    byPart: 'Nach Teil',
    byPlace: 'Nach Stelle',
  },
  page: {
    title: (title) => `Foto: ${title}`,
    description: (name) => `Ein Foto von ${name}.`,
    document: 'Foto',
    valuesAsOf: (day) => `Werte vom Stand ${day}.`,
    others: 'Weitere Fotos',
    before: 'Davor',
    after: 'Danach',
  },
  takenOn: 'Aufgenommen am {day}',
  facts: {
    parts: 'Teile',
    shownIn: 'Gezeigt in',
    readings: 'Messungen',
    findings: 'Befunde',
    taken: 'Aufgenommen',
    place: 'Stelle',
    state: 'Zustand',
  },
  evidence: {
    title: 'Das Original',
    stays: 'Das Original bleibt beim Erbauer. Seine SHA-256 ist {hash}',
    staysTaken: (day) =>
      `Das Original, aufgenommen am ${day}, bleibt beim Erbauer. Seine SHA-256 ist {hash}`,
    whoever:
      'Wer das Original gezeigt bekommt, kann diese Zahl nachrechnen. Kommt dieselbe heraus, so ist es die Datei, aus der veröffentlicht wurde, und kein Bit davon wurde seither verändert. Die Zahl sagt nicht, was vor der Linse stand oder ob die Uhr der Kamera richtig ging.',
    rows: 'Diese Zeilen tragen die Zahl in ihrem {marked} Text, so dass sie nicht spurlos ausgetauscht werden kann:',
    marked: 'mit Prüfmarke versehenen',
    row: (day) => `{row}, Prüfmarke vom ${day}`,
  },
  pair: {
    before: 'Vorher',
    after: 'Nachher',
    later: (days) => (days === 1 ? 'Einen Tag später' : `${days} Tage später`),
    range: 'Wie weit das frühere Foto zu sehen ist, von links',
    sideBySide: 'Nebeneinander',
    over: 'Übereinander',
    shares: '{before} % vorher, {after} % nachher',
  },
  callouts: (count) =>
    `${count === 1 ? '1 Hinweis' : `${count} Hinweise`}, unter dem Foto aufgeführt.`,
  found: (what) => `Befund: ${what}`,
};

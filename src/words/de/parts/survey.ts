import type { Words } from '../../keys.ts';

export const survey: Words['parts']['survey'] = {
  title: 'Bestandsaufnahme',
  description: (project) =>
    `Was an den Teilen von ${project} gefunden wurde, und nach welchen Zustandsnoten sie beurteilt sind.`,
  none: 'Bisher ist kein Teil aufgenommen.',
  count: (findings, surveys) =>
    `${findings} ${findings === 1 ? 'Befund' : 'Befunde'} in ${surveys} ${surveys === 1 ? 'Bestandsaufnahme' : 'Bestandsaufnahmen'}.`,
  structureCaution:
    'Eine Zustandsnote sagt, was gefunden wurde, und nicht, dass ein Teil sicher ist. Was an tragender Struktur fehlen darf und wie sie instand gesetzt wird, entscheiden eine Fachkraft und die örtlichen Vorschriften.',
  scale: 'Die Zustandsnoten',
  scaleRule:
    'Ein Teil erhält von oben die erste Zustandsnote, deren Grenzen alle eingehalten sind. Eine Grenze der Dicke ist eingehalten, wenn das nachgewiesen ist: Der ganze Bereich Wert ± U liegt auf der guten Seite. Wo U nicht entscheidet, stehen beide Noten. Flächen sind nach Augenmaß geschätzt. Die Restdicke ist die Messung, geteilt durch das Nennmaß ihres Kennwerts, das als genau gilt.',
  ownScale: 'Die Grenzen sind übliche Praxis und stammen aus keiner Norm.',
  taken: '{date}.',
  takenBy: '{date}, von {person}.',
  helper: 'Helfer',
  compared: 'Verglichen mit früheren Befunden',
  gone: 'Befunde, die nicht mehr zählen',
  label: (survey) => `Bestandsaufnahme: ${survey}`,
  whole: 'Die ganze Bestandsaufnahme und die Zustandsnoten',
  columns: { grade: 'Zustandsnote', leastLeft: 'Geringste Restdicke', found: 'Befund' },
  scaleColumns: {
    label: 'Zustandsnoten',
    means: 'Bedeutung',
    limits: 'Grenzen',
    allows: 'Außerdem zulässig',
    noLimits: 'keine',
    takesAll: 'alles, was keine andere Note zulässt',
    takesNothing: 'nichts weiter',
  },
  found: {
    sound: 'in Ordnung',
    wear: 'Verschleiß',
    corrosion: 'Oberflächenrost',
    thin: 'dünn',
    filler: 'Spachtel',
    perforation: 'durchgerostet',
    crack: 'Riss',
    bent: 'verbogen',
    leak: 'undicht',
    seized: 'fest',
    missing: 'fehlt',
  },
  finding: {
    area: (share) => `${share} % der Fläche`,
    photo: 'Foto',
    left: (nominal) => `{reading} von ${nominal}: noch {left}`,
  },
  grades: {
    'as-made': {
      name: 'wie ab Werk',
      definition:
        'Wie es vom Hersteller kam. Es wurde angesehen, und nichts daran mindert seinen Wert.',
    },
    'light-wear': {
      name: 'leichte Spuren',
      definition:
        'Geht wieder hinein, wie es ist. Oberflächenrost oder Verschleiß, dem mit Reinigen oder Einstellen beizukommen ist.',
    },
    worn: {
      name: 'verschlissen',
      definition:
        'Geht nach kleiner Arbeit wieder hinein: eine Delle gerichtet, eine Dichtung erneuert, eine dünne Stelle im Auge behalten.',
    },
    'to-mend': {
      name: 'instand zu setzen',
      definition:
        'Muss vor dem Einbau instand gesetzt werden: neues Blech eingesetzt, Risse geschlossen. Das meiste bleibt.',
    },
    'to-rebuild': {
      name: 'neu aufzubauen',
      definition:
        'Mehr Arbeit als ein neues der gleichen Art; lohnt sich, wo es kein anderes gibt.',
    },
    pattern: {
      name: 'nur als Muster',
      definition: 'Taugt höchstens zum Messen und Nachbauen, oder ist gar nicht vorhanden.',
    },
  },
  undecidedOfTwo: (better, worse) => `${better} oder ${worse}, unentschieden`,
  undecidedOfMany: (best, worst) => `zwischen ${best} und ${worst}, unentschieden`,
  gradeVerdicts: {
    meets: 'eingehalten',
    'does not meet': 'nicht eingehalten',
    undecided: 'unentschieden',
  },
  limits: {
    remaining: (limit) => `mindestens ${limit} % Restdicke`,
    filler: (limit) => `höchstens ${limit} % Spachtel`,
    holes: (limit) => `höchstens ${limit} % durchgerostet`,
    noFiller: 'kein Spachtel',
    noHoles: 'nichts durchgerostet',
  },
  tests: {
    verdicts: {
      meets: 'eingehalten',
      'does not meet': 'nicht eingehalten',
      undecided: 'unentschieden',
    },
    forbids: (findings) => `nicht zulässig: ${findings}`,
    allowsOthers: 'andere Befunde: zulässig',
    filler: (area, limit, verdict) => `Spachtel: ${area}, höchstens ${limit} %: ${verdict}`,
    holes: (area, limit, verdict) => `durchgerostet: ${area}, höchstens ${limit} %: ${verdict}`,
    noArea: 'nichts',
    area: (share) => `${share} % der Fläche`,
    areaAndMore: (share) => `${share} % der Fläche und mehr`,
    areaNotStated: 'auf einem nicht angegebenen Anteil',
    thicknessNotAsked: 'Dicke: nicht gemessen, daher gilt die Grenze nicht',
    thickness: (known, limit, verdict) => `${known}, mindestens ${limit} %: ${verdict}`,
    left: (value) => `noch ${value}`,
    notRead: 'Dicke nicht gemessen',
    thinUnread: (known) => `${known}, dazu dünn, wo niemand gemessen hat`,
    withoutU: (known) => `${known}, U nicht bekannt`,
  },
  changes: {
    label: 'Verglichen mit früheren Bestandsaufnahmen',
    was: 'Vorher',
    is: 'Jetzt',
    says: 'Ergebnis',
    leastWas: 'Geringste Restdicke, vorher',
    difference: 'Differenz in Prozentpunkten',
    replacedBy: (before, after) => `${before}, dann ${after}`,
    turns: {
      better: 'besser',
      worse: 'schlechter',
      same: 'unverändert',
      undecided: 'unentschieden',
    },
    anotherOne: (turn) => `${turn}; ein anderes`,
    inSurvey: (survey) => survey,
    now: 'jetzt',
    inItsPlace: 'an seiner Stelle',
    withoutU: (size) => `(${size}), Messunsicherheit nicht bekannt`,
    changed: (size) => `(${size}), verändert`,
    unchanged: (size) => `(${size}), keine messbare Änderung`,
    caption:
      'Geringste Restdicke in Prozent des Nennmaßes. Strich-Zweipunkt: vorher. Breit: diese Bestandsaufnahme. Der kurze Balken darunter ist U bei 95 %; die senkrechten Linien sind die Grenzen der Zustandsnoten.',
  },
  drawing: (bars) => `Restdicke in Prozent des Nennmaßes: ${bars}.`,
};

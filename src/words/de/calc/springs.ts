import type { Words } from '../../keys.ts';

const thrownOut = 'Eine gespannte Feder kann mit großer Wucht herausgeschleudert werden.';

/** Ride and springs. */
export const springs: Words['calc'] = {
  'wheel-rate': {
    title: 'Federrate am Rad, aus Federrate und Federübersetzung',
    inputs: { k_s: 'Rate der Feder', MR: 'Federübersetzung, Federweg / Radweg' },
    assumptions: [
      'die Federübersetzung wurde nahe der Standhöhe des Fahrzeugs über einen kleinen Weg bestimmt',
      'Gummilager und Stabilisator bleiben außer Betracht',
    ],
  },
  'ride-rate': {
    title: 'Gesamtfederrate: Feder und Reifen in Reihe',
    inputs: { k_w: 'Rate der Feder am Rad', k_t: 'Rate des Reifens' },
    assumptions: [
      'die Rate der Feder ist die am Rad, nach Berücksichtigung der Federübersetzung',
      'beide Raten gelten nahe der Standhöhe des Fahrzeugs; der Reifen hat seinen Druck',
    ],
  },
  'ride-frequency': {
    title: 'Eigenfrequenz des Aufbaus über einem Rad',
    inputs: { k_r: 'Gesamtfederrate', m_s: 'gefederte Masse über dem Rad' },
    assumptions: [
      'die gefederte Masse ist die Radlast ohne Rad, Nabe, Bremse und die Hälfte der Lenker',
      'Dämpfung und Eigenmasse des Rads bleiben außer Betracht, was deutlich unter einem Prozent ausmacht',
    ],
  },
  'static-deflection': {
    title: 'Statische Einfederung unter der Last',
    inputs: { m: 'getragene Masse', k: 'Rate der Feder' },
    assumptions: [
      'von unbelastet bis voll belastet gilt ein und dieselbe Rate',
      'Masse und Rate gehören zum selben Ort: beide am Rad oder beide an der Feder',
    ],
  },
  'damping-ratio': {
    title: 'Dämpfungsgrad',
    inputs: { c: 'Dämpfung am Rad', k: 'Federrate am Rad', m: 'getragene Masse' },
    assumptions: [
      'die Dämpferkraft wächst gleichmäßig mit der Geschwindigkeit, in Druck- und Zugstufe gleich; wirkliche Dämpfer tun das nicht',
      'ein schräg oder weiter innen angeordneter Dämpfer wird zuerst auf das Rad umgerechnet, mit dem Quadrat seiner Übersetzung',
    ],
    caution:
      'Ein zu schwach gedämpftes Rad verliert die Bodenhaftung. Geänderte Dämpfereinstellungen von einer Fachkraft erproben lassen.',
  },
  'leaf-rate': {
    title: 'Federrate einer Blattfeder',
    inputs: {
      n_F: 'Blätter voller Länge außer dem Hauptblatt',
      n_G: 'abgestufte Blätter, mit dem Hauptblatt',
      L: 'wirksame halbe Länge',
      b: 'Breite der Blätter',
      t: 'Dicke eines Blatts',
      E: 'Elastizitätsmodul',
    },
    assumptions: [
      'alle Blätter sind gleich breit und gleich dick und laufen nicht dünner aus',
      'die abgestuften Blätter, darunter das Hauptblatt, sind gleichmäßig gestuft; Blätter voller Länge sind die außer dem Hauptblatt',
      'wirksame halbe Länge: halber Abstand der Federaugen, abzüglich der halben Breite des Federbunds oder eines Drittels des Abstands der Federbügel',
      'die Feder ist ziemlich flach, die Blätter gleiten reibungsfrei und sind nicht vorgespannt',
      'Federstahl mit 207 000 MPa, wenn kein anderer Modul angegeben ist',
    ],
    caution: `Eine Federrate sagt nichts über die Festigkeit: Ein Blatt mit dieser Rate kann trotzdem überbeansprucht sein. ${thrownOut}`,
  },
  'coil-rate': {
    title: 'Federrate einer Schraubenfeder',
    inputs: {
      d: 'Drahtdurchmesser',
      D: 'mittlerer Windungsdurchmesser',
      N_a: 'federnde Windungen',
      G: 'Schubmodul',
    },
    assumptions: [
      'runder Draht und eine zylindrische Feder mit gleichbleibender Steigung',
      'nur die federnden Windungen zählen: Angelegte und geschliffene Enden kosten etwa zwei',
      'im genutzten Federweg berührt keine Windung die nächste',
      'Federstahl mit einem Schubmodul von 79 300 MPa, wenn kein anderer angegeben ist',
    ],
    caution: `Eine Federrate sagt nichts über die Festigkeit oder über die Last, bei der die Windungen aufeinanderliegen. ${thrownOut}`,
    requires: ['der Draht ist so dick wie der Windungsdurchmesser'],
  },
};

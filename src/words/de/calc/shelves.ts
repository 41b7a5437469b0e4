import type { Words } from '../../keys.ts';

export const shelves: Words['calc'] = {
  'book-mass': {
    title: 'Masse einer Reihe Bücher',
    inputs: { m_L: 'Masse der Bücher je Länge des Bretts', L: 'Länge der Reihe' },
    assumptions: [
      'die Masse je Länge wurde an solchen Büchern gewogen: 22,5 kg/m für Kochbücher, 35 kg/m als Faustregel für ein Brett von 300 mm',
      'eine Reihe, keine Bücher quer obenauf',
    ],
    caution: 'Bücher sind schwer: Ein volles Regal, das ausreißt, kann jemanden verletzen.',
  },
  'shelf-deflection': {
    title: 'Durchbiegung eines gleichmäßig belasteten Bretts',
    inputs: {
      q: 'Masse je Länge des Bretts, einschließlich seiner eigenen',
      L: 'Stützweite zwischen den Auflagern',
      b: 'Tiefe des Bretts, von vorn nach hinten',
      h: 'Dicke des Bretts',
      E: 'Elastizitätsmodul längs der Stützweite',
    },
    assumptions: [
      'rechteckiges Brett von gleicher Dicke, an den Enden frei aufliegend: weder eingespannt noch durch Rückwand oder Kante versteift',
      'Durchbiegung nur durch Biegung und klein gegen die Stützweite',
      'die Durchbiegung des ersten Tages: Abgelagertes Holz unter bleibender Last biegt sich mit der Zeit etwa 1,5-mal so weit durch (National Design Specification for Wood Construction 3.5.2, zitiert bei awc.org)',
    ],
    caution:
      'Dies sagt, wie ein Brett aussieht, nicht, was es trägt, bevor es bricht oder seine Auflager ausreißen.',
    requires: ['das Brett ist dicker als seine Stützweite'],
  },
};

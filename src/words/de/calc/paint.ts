import type { Words } from '../../keys.ts';

const VS = 'Volumenanteil der nichtflüchtigen Stoffe im Beschichtungsstoff';
const th = 'Verdünnung, bezogen auf das Volumen des Beschichtungsstoffs';
const loss = 'Anteil des Beschichtungsstoffs, der verloren geht';
const DFT = 'Trockenschichtdicke';
const aboveWhole = 'der Volumenanteil der nichtflüchtigen Stoffe liegt über 100 %';
const allLost = 'der ganze Beschichtungsstoff geht verloren';
const beforeThinning =
  'Volumenanteil der nichtflüchtigen Stoffe vor dem Verdünnen; die Verdünnung entweicht ganz aus der Schicht';

export const paint: Words['calc'] = {
  'paint-coverage': {
    title: 'Theoretische Ergiebigkeit eines Beschichtungsstoffs',
    inputs: { VS, DFT },
    assumptions: [
      'glatte Oberfläche, gleichmäßige Schicht, keine Verluste',
      'Volumenanteil der nichtflüchtigen Stoffe, nicht Massenanteil, des Beschichtungsstoffs wie im Gebinde geliefert',
      'alle flüchtigen Bestandteile entweichen aus der Schicht, und sonst nichts',
    ],
    requires: [aboveWhole],
  },
  'paint-coverage-practical': {
    title: 'Praktische Ergiebigkeit eines Beschichtungsstoffs',
    inputs: { C: 'theoretische Ergiebigkeit', loss },
    assumptions: [
      'der Verlust ist ein Anteil des verbrauchten Beschichtungsstoffs: Spritznebel, Reste in Gebinde, Becher und Schlauch, Rauheit der Oberfläche',
      'übliche Verluste: 10 bis 15 % mit Pinsel oder Rolle, etwa 30 % beim Airless-Spritzen, bis 50 % beim Druckluftspritzen (scribd.com 290710110)',
    ],
    requires: [allLost],
  },
  'wet-film': {
    title: 'Nassschicht für eine Trockenschicht',
    inputs: { DFT, VS, th },
    assumptions: [
      beforeThinning,
      'die Nassschicht wird sofort abgelesen, bevor Lösemittel aus ihr entwichen ist',
    ],
    requires: [aboveWhole],
  },
  'dry-film': {
    title: 'Trockenschicht aus einer Nassschicht',
    inputs: { WFT: 'Nassschichtdicke', VS, th },
    assumptions: [
      beforeThinning,
      'die Nassschicht wurde sofort abgelesen, bevor Lösemittel aus ihr entwichen war',
    ],
    caution:
      'Eine aus der Nassschicht errechnete Trockenschicht ist eine Schätzung; wo der Korrosionsschutz davon abhängt, die Trockenschicht messen.',
    requires: [aboveWhole],
  },
  'paint-needed': {
    title: 'Bedarf an Beschichtungsstoff für eine Fläche',
    inputs: {
      A: 'zu beschichtende Fläche',
      n: 'Zahl der Schichten',
      DFT: 'Trockenschichtdicke einer Schicht',
      VS,
      loss,
    },
    assumptions: [
      'Beschichtungsstoff wie im Gebinde geliefert, vor Zugabe der Verdünnung',
      'alle Schichten sind gleich dick; Schichten aus verschiedenen Stoffen werden einzeln gerechnet',
      'der Verlust ist ein Anteil des verbrauchten Beschichtungsstoffs, nicht dessen, was haften bleibt',
    ],
    requires: [aboveWhole, allLost],
  },
};

import type { Words } from '../../keys.ts';
import { cornerAssumptions, corners, loadedAsUsed, noLoad } from './shared.ts';

const wrongCentre =
  'Ein Hebezeug oder Anschlagmittel, das nach einem falschen Schwerpunkt angesetzt ist, lässt das Fahrzeug abstürzen. Erst niedrig erproben, eine Handbreit über den Böcken.';

export const weighing: Words['calc'] = {
  'axle-share': {
    title: 'Anteil der Last auf einer Achse',
    inputs: { W: 'Last dieser Achse', others: 'Last einer anderen Achse' },
    assumptions: ['die Achsen stehen auf gleicher Höhe, während jede gewogen wird', loadedAsUsed],
    caution:
      'Auch bei gutem Anteil kann eine Achse überlastet sein. Jede Last auch mit der zulässigen Achslast vergleichen.',
  },
  'corner-share': {
    title: 'Anteil der Last auf einem Rad',
    inputs: { W: 'Last dieses Rads', others: 'Last eines anderen Rads' },
    assumptions: cornerAssumptions,
  },
  'cross-weight': {
    title: 'Diagonallast: Anteil auf rechtem Vorderrad und linkem Hinterrad',
    inputs: corners,
    assumptions: [
      ...cornerAssumptions,
      'die Stabilisatoren sind ausgehängt oder unbelastet, damit allein die Federn verglichen werden',
    ],
    requires: [noLoad],
  },
  'side-share': {
    title: 'Anteil der Last auf der linken Seite',
    inputs: corners,
    assumptions: cornerAssumptions,
    requires: [noLoad],
  },
  'cg-along': {
    title: 'Schwerpunkt hinter der Vorderachse',
    inputs: { L: 'Radstand', Wf: 'Vorderachslast', Wr: 'Hinterachslast' },
    assumptions: [
      'zwei Achsen, beim Wiegen auf gleicher Höhe',
      'der Radstand ist auf beiden Seiten gleich, oder er ist das Mittel aus beiden',
      loadedAsUsed,
    ],
    caution: wrongCentre,
  },
  'cg-across': {
    title: 'Schwerpunkt neben der Mittellinie, nach rechts positiv',
    inputs: { ...corners, t_f: 'Spurweite vorn', t_r: 'Spurweite hinten' },
    assumptions: [
      ...cornerAssumptions,
      'die Spurweiten gelten von Reifenmitte zu Reifenmitte und liegen symmetrisch zu einer gemeinsamen Mittellinie',
    ],
    caution: wrongCentre,
    requires: [noLoad],
  },
  'cg-height-raised-axle': {
    title: 'Höhe des Schwerpunkts, durch Anheben der Hinterachse',
    inputs: {
      L: 'Radstand',
      Wf: 'Vorderachslast, waagerecht',
      Wr: 'Hinterachslast, waagerecht',
      Wq: 'Vorderachslast, hinten angehoben',
      H: 'Anhebung der hinteren Radmitten',
      Rf: 'Halbmesser der Vorderräder unter Last',
      Rr: 'Halbmesser der Hinterräder unter Last',
    },
    assumptions: [
      'die Federung ist blockiert, während die Achse angehoben ist',
      'Lasten verlagern sich nicht: Kraftstoffstand und Ladung bleiben, wo sie sind',
      'die Achslasten waagerecht und angehoben sind mit denselben Waagen bestimmt',
    ],
    caution:
      'Ein angehobenes Fahrzeug kann wegrollen oder von den Böcken rutschen. Eine falsche Höhe verbirgt, dass ein Fahrzeug leicht kippt.',
    requires: [
      'die Anhebung ist so groß wie der Radstand',
      'die Vorderachse wird nicht schwerer, wenn hinten angehoben ist',
    ],
  },
};

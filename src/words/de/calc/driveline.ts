import type { Words } from '../../keys.ts';
import { atRunningHeight } from './shared.ts';

export const driveline: Words['calc'] = {
  'joint-angle': {
    title: 'Beugewinkel eines Kreuzgelenks',
    inputs: { T: 'Winkel in der Draufsicht', S: 'Winkel in der Seitenansicht' },
    assumptions: [
      'beide Winkel liegen zwischen denselben zwei Wellen, auf zwei zueinander rechtwinklige Ebenen projiziert',
      'eine der beiden Wellen liegt nahe der Schnittlinie dieser Ebenen',
      atRunningHeight,
    ],
    caution:
      'Ein Gelenk jenseits des Winkels, den der Hersteller bei seiner Drehzahl zulässt, kann versagen, und eine gebrochene Welle kann durch den Boden schlagen.',
    requires: [
      'der Winkel in der Draufsicht ist ein rechter oder größer',
      'der Winkel in der Seitenansicht ist ein rechter oder größer',
    ],
  },
  'joint-fluctuation': {
    title: 'Ungleichförmigkeit eines Kreuzgelenks',
    inputs: { beta: 'Beugewinkel des Gelenks' },
    assumptions: [
      'ein einfaches Kreuzgelenk; ein Gleichlaufgelenk hat keine Ungleichförmigkeit',
      'die treibende Welle dreht gleichmäßig',
    ],
    caution:
      'Ungleichförmiger Lauf rüttelt den Antriebsstrang mit der Zeit auseinander; ein Gelenk jenseits des vom Hersteller zugelassenen Winkels kann versagen.',
    requires: ['der Beugewinkel ist ein rechter oder größer'],
  },
  'joint-cancellation': {
    title: 'Unterschied zweier Beugewinkel',
    inputs: {
      beta_1: 'Beugewinkel des ersten Gelenks',
      beta_2: 'Beugewinkel des zweiten Gelenks',
    },
    assumptions: [
      'die Gabeln auf der Welle stehen gleich, und alle drei Wellen liegen in einer Ebene; sonst heben gleiche Winkel einander nicht auf',
      'veröffentlichte Grenzen für jeden Winkel: mindestens 0,5°, höchstens 3° für schwingungsfreien Lauf',
      'veröffentlichte Grenzen über 3° hinaus, bei parallelen Wellen: 5,0° bei 3500 rpm, 4,2° bei 4000, 3,7° bei 4500, 3,2° bei 5000',
      atRunningHeight,
    ],
    caution:
      'Eine schwingende Welle zerstört Gelenke und Lagerungen, und eine gebrochene Welle kann durch den Boden schlagen.',
    requires: [
      'der Winkel des ersten Gelenks ist ein rechter oder größer',
      'der Winkel des zweiten Gelenks ist ein rechter oder größer',
    ],
  },
};

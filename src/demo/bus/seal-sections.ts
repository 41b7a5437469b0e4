import { dimension } from '../dimension.ts';
import { axis, coloured, edge, fine, flat, moved, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { arc, box, disc, line, type Point } from '../shape.ts';

const GREY = '#757c81';

/** Three rubber sections as they were sent out; nobody knew the third. */
export function sealSections(): string {
  return (
    panel([104, 110], 'side window', windowRubber()) +
    panel([712, 110], 'windscreen', screenRubber()) +
    panel([1320, 110], 'side door', doorSeal()) +
    lettering('?', [1800, 420], { size: 170, colour: tint.red })
  );
}

function panel(at: Point, name: string, marks: string): string {
  return moved(
    at,
    flat(box([0, 0], [576, 1220]), tint.dust) +
      lettering(name, [288, 1170], { size: 46, anchor: 'middle' }) +
      marks,
  );
}

/** An H: one slot for the glass, one for the body. */
function windowRubber(): string {
  const section =
    'M150 260Q150 230 180 230H250Q276 230 276 256V470H310V256Q310 230 336 230H400Q430 230 430 262V480Q430 560 380 580Q430 600 430 680V880Q430 910 400 910H336Q310 910 310 884V680H266V884Q266 910 240 910H180Q150 910 150 880V690Q150 600 200 580Q150 560 150 470Z';
  return (
    axis(line([288, 170], [288, 960])) +
    edge(section, GREY) +
    edge(box([277, 236], [32, 234]), tint.glass) +
    edge(box([267, 682], [42, 240]), tint.steel) +
    dimension([150, 230], [430, 230], { text: '13', offset: 70 }) +
    dimension([150, 910], [150, 230], { text: '31', offset: 64 }) +
    dimension([266, 930], [310, 930], { text: '2', offset: -56 })
  );
}

/** The same idea, fatter, with the filler strip in its groove. */
function screenRubber(): string {
  const section =
    'M130 300Q130 240 190 240H262V500H306V240H380Q446 240 446 310V470Q446 500 420 520L396 560L420 600Q446 620 446 660V850Q446 900 396 900H330V700H276V900H180Q130 900 130 850V640Q130 570 170 560Q130 550 130 480Z';
  return (
    axis(line([284, 170], [284, 960])) +
    edge(section, GREY) +
    edge(box([263, 246], [42, 254]), tint.glass) +
    edge(box([277, 702], [52, 218]), tint.steel) +
    edge(disc([432, 560], 34), '#5b6267') +
    fine(disc([432, 560], 12), tint.steelLight) +
    dimension([130, 240], [446, 240], { text: '15', offset: 70 }) +
    dimension([130, 900], [130, 240], { text: '30', offset: 56 }) +
    dimension([276, 930], [330, 930], { text: '2.5', offset: -56 })
  );
}

/** Hollow bulb, lip, and a foot with a slot. */
function doorSeal(): string {
  const bulb: Point = [240, 420];
  const lip = 'M356 480Q450 520 486 640Q490 668 466 672Q440 674 430 650Q400 560 320 536Z';
  const foot =
    'M176 536H320V660H380Q410 660 410 690V880Q410 910 380 910H310V720H262V910H190Q160 910 160 880V690Q160 670 176 660Z';
  // The three are one piece: what parts them is painted over again.
  const joints =
    flat(box([180, 500], [136, 60]), GREY) + coloured(arc(bulb, 138, [29, 51]), GREY, 10);
  return (
    edge(foot, GREY) +
    edge(lip, GREY) +
    edge(disc(bulb, 138), GREY) +
    joints +
    edge(disc(bulb, 96), tint.dust) +
    axis(line([240, 230], [240, 560])) +
    dimension([102, 282], [378, 282], { text: '12', offset: 70 }) +
    dimension([102, 910], [102, 282], { text: '28', offset: 50 }) +
    dimension([262, 930], [310, 930], { text: '2', offset: -56 })
  );
}

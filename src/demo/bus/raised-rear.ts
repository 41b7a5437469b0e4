import { dimension } from '../dimension.ts';
import { axis, coloured, edge, fine, flat, moved, scaled, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, outline, type Point, spread } from '../shape.ts';
import { block, groundShadow } from '../solid.ts';
import { busSide, FINISHED, WHEEL_RADIUS, WHEELBASE } from './side.ts';

const SCALE = 0.345;
const RAISED = 600;
const SLOPE = (Math.asin(RAISED / WHEELBASE) * 180) / Math.PI;
const GROUND = 1270;
const PLATFORM = 34;
/** The middle of the front wheel, about which the bus is turned. */
const FRONT: Point = [476, GROUND - PLATFORM - WHEEL_RADIUS * SCALE];

/** Tail up on stands, nose on the scales; the cross is the centre of gravity. */
export function raisedRear(): string {
  const bus = moved(FRONT, scaled([0, 0], SCALE, moved([0, WHEEL_RADIUS], busSide(FINISHED))), {
    turn: -SLOPE,
  });
  return (
    flat(box([110, 110], [1780, GROUND - 110]), tint.dust) +
    ground() +
    scalesUnderFront() +
    stand() +
    bus +
    gravity() +
    height()
  );
}

function ground(): string {
  const hatching = spread(130, 1850, 45)
    .map((x) => line([x + 22, GROUND + 4], [x, GROUND + 26]))
    .join('');
  return fine(line([90, GROUND], [1910, GROUND]) + hatching) + groundShadow([900, GROUND + 2], 640);
}

function scalesUnderFront(): string {
  return (
    block([FRONT[0] - 120, GROUND - PLATFORM], [240, PLATFORM], tint.steelDark, 6) +
    edge(
      outline(
        [FRONT[0] + 92, GROUND - PLATFORM],
        [FRONT[0] + 150, GROUND - PLATFORM],
        [FRONT[0] + 110, GROUND - PLATFORM - 44],
      ),
      tint.woodDark,
    )
  );
}

function rearWheel(): Point {
  const angle = (-SLOPE * Math.PI) / 180;
  return [
    FRONT[0] + WHEELBASE * SCALE * Math.cos(angle),
    FRONT[1] + WHEELBASE * SCALE * Math.sin(angle),
  ];
}

/** Crossed timbers, as high as the wheel is lifted above the platforms. */
function stand(): string {
  const [x, y] = rearWheel();
  const top = y + WHEEL_RADIUS * SCALE;
  const rows = 6;
  const tall = (GROUND - top) / rows;
  const row = (index: number): string =>
    index % 2 === 0
      ? edge(box([x - 150, top + index * tall], [300, tall], 4), tint.wood)
      : [-150, -40, 70]
          .map((shift) => edge(box([x + shift, top + index * tall], [80, tall], 4), tint.woodDark))
          .join('');
  return Array.from({ length: rows }, (_, index) => row(index)).join('');
}

/** 55 % of the way from the front wheels to the rear ones, 0.85 m above the ground of the level bus. */
function gravity(): string {
  const angle = (-SLOPE * Math.PI) / 180;
  const [along, up] = [0.545 * WHEELBASE * SCALE, (850 - WHEEL_RADIUS) * SCALE];
  const at: Point = [
    FRONT[0] + along * Math.cos(angle) + up * Math.sin(angle),
    FRONT[1] + along * Math.sin(angle) - up * Math.cos(angle),
  ];
  const [x, y] = at;
  return (
    axis(line([x, y - 330], [x, GROUND])) +
    coloured(line([x - 64, y], [x + 64, y]) + line([x, y - 64], [x, y + 64]), tint.red, 9) +
    coloured(disc(at, 34), tint.red, 7) +
    flat(`M${x} ${y}h34a34 34 0 0 1 -34 34Z M${x} ${y}h-34a34 34 0 0 1 34 -34Z`, tint.red)
  );
}

function height(): string {
  const [x, y] = rearWheel();
  const low = FRONT[1] + WHEEL_RADIUS * SCALE;
  return (
    fine(line([FRONT[0] + 130, low], [1680, low])) +
    dimension([x + 150, low], [x + 150, y + WHEEL_RADIUS * SCALE], { text: '', offset: -190 }) +
    lettering('600 mm', [x + 366, (low + y + WHEEL_RADIUS * SCALE) / 2 + 16], { size: 44 })
  );
}

import { axleOnJacks } from './bus/axle-on-jacks.ts';
import { axlesSideBySide } from './bus/axles-side-by-side.ts';
import { busSideView } from './bus/bus-side-view.ts';
import { compressionBars } from './bus/compression-bars.ts';
import { crateOnScale } from './bus/crate-on-scale.ts';
import { diagonals } from './bus/diagonals.ts';
import { doorSkinHem } from './bus/door-skin-hem.ts';
import { fourScalesPlan } from './bus/four-scales-plan.ts';
import { glassPlan } from './bus/glass-plan.ts';
import { loomBoard } from './bus/loom-board.ts';
import { paintCoats } from './bus/paint-coats.ts';
import { raisedRear } from './bus/raised-rear.ts';
import { ribsNine } from './bus/ribs-nine.ts';
import { sealSections } from './bus/seal-sections.ts';
import { seatAnchorSection } from './bus/seat-anchor-section.ts';
import { shelfOneSection } from './bus/shelf-one-section.ts';
import { sideElevationGreens } from './bus/side-elevation-greens.ts';
import { sillBentFlange } from './bus/sill-bent-flange.ts';
import { sillSection } from './bus/sill-section.ts';
import { spacerSection } from './bus/spacer-section.ts';
import { springRig } from './bus/spring-rig.ts';
import { threeQuarterOpen } from './bus/three-quarter-open.ts';
import { twoBuses } from './bus/two-buses.ts';
import { benchLathe } from './lathe/bench-lathe.ts';
import { bluePoints } from './lathe/blue-points.ts';
import { foilUnderFoot } from './lathe/foil-under-foot.ts';
import { headstockDial } from './lathe/headstock-dial.ts';
import { partsTray } from './lathe/parts-tray.ts';
import { twoCollars } from './lathe/two-collars.ts';

/** A picture of the demo: where it goes, whose day it carries, and who draws it. */
export interface Picture {
  readonly project: 'lapwing' | 'ostermoor';
  /** Name in the project's photos/ folder, as the entry of that day has it. */
  readonly file: string;
  readonly day: string;
  readonly title: string;
  readonly scene: () => string;
}

/** Machine names for the title block. */
export const MACHINES = { lapwing: 'Fenwright Lapwing 11', ostermoor: 'Ostermoor 65' } as const;

/** Every picture that the demo's entries name, in the order of the log. */
export const PICTURES: readonly Picture[] = [
  ...picturesOf('lapwing', [
    ['bus-side-view.jpg', '2025-07-26', 'From the left, as it stands', busSideView],
    ['four-scales-plan.jpg', '2025-08-03', 'Four corners, four platforms', fourScalesPlan],
    ['sill-section.jpg', '2025-08-10', 'Left sill', sillSection],
    ['two-buses.jpg', '2025-08-16', 'What stays, what gives', twoBuses],
    ['glass-plan.jpg', '2025-09-14', 'Ten panes', glassPlan],
    ['axles-side-by-side.jpg', '2025-09-27', 'Backlash of two axles', axlesSideBySide],
    ['diagonals.jpg', '2025-10-12', 'Two rectangles', diagonals],
    ['spacer-section.jpg', '2025-10-26', 'Six millimetres', spacerSection],
    ['sill-bent-flange.jpg', '2025-11-16', 'Left sill, rear end', sillBentFlange],
    ['ribs-nine.jpg', '2026-01-04', 'Nine ribs', ribsNine],
    ['spring-rig.jpg', '2026-01-18', 'Spring rig, lid left out', springRig],
    ['axle-on-jacks.jpg', '2026-03-01', 'Axle going in', axleOnJacks],
    ['seal-sections.jpg', '2026-03-08', 'Rubber sections, double size', sealSections],
    ['compression-bars.jpg', '2026-03-22', 'Compression', compressionBars],
    ['door-skin-hem.jpg', '2026-04-06', 'The hem in four passes', doorSkinHem],
    ['paint-coats.jpg', '2026-04-26', 'A chip from the left side', paintCoats],
    ['side-elevation-greens.jpg', '2026-05-24', 'Two greens and a cream', sideElevationGreens],
    ['loom-board.jpg', '2026-06-14', 'Sixty-one wires', loomBoard],
    ['shelf-one-section.jpg', '2026-06-28', 'Shelf unit, end view', shelfOneSection],
    ['seat-anchor-section.jpg', '2026-07-12', 'One of four anchorages', seatAnchorSection],
    ['crate-on-scale.jpg', '2026-07-26', 'One metre of spines', crateOnScale],
    ['raised-rear.jpg', '2026-08-23', 'Height of the centre of gravity', raisedRear],
    ['three-quarter-open.jpg', '2026-09-26', 'In the yard, door open', threeQuarterOpen],
  ]),
  ...picturesOf('ostermoor', [
    ['bench-lathe.jpg', '2026-01-10', 'Names of the parts', benchLathe],
    ['parts-tray.jpg', '2026-02-15', 'Four trays of sixteen', partsTray],
    ['blue-points.jpg', '2026-04-26', 'Blue on the front way', bluePoints],
    ['headstock-dial.jpg', '2026-05-24', 'Run-out of the spindle nose', headstockDial],
    ['foil-under-foot.jpg', '2026-05-24', 'Foil under the nose end', foilUnderFoot],
    ['two-collars.jpg', '2026-06-27', 'Two collars', twoCollars],
  ]),
];

type Row = readonly [file: string, day: string, title: string, scene: () => string];

function picturesOf(project: Picture['project'], rows: readonly Row[]): Picture[] {
  return rows.map(([file, day, title, scene]) => ({ project, file, day, title, scene }));
}

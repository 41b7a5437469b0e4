import type { Words } from '../keys.ts';
import { bolts } from './calc/bolts.ts';
import { brakes } from './calc/brakes.ts';
import { driveline } from './calc/driveline.ts';
import { electrics } from './calc/electrics.ts';
import { engine } from './calc/engine.ts';
import { frame } from './calc/frame.ts';
import { gearing } from './calc/gearing.ts';
import { machineGeometry } from './calc/machine-geometry.ts';
import { paint } from './calc/paint.ts';
import { sheet } from './calc/sheet.ts';
import { shelves } from './calc/shelves.ts';
import { springs } from './calc/springs.ts';
import { use } from './calc/use.ts';
import { weighing } from './calc/weighing.ts';

export const calc: Words['calc'] = {
  ...sheet,
  ...weighing,
  ...frame,
  ...springs,
  ...gearing,
  ...driveline,
  ...brakes,
  ...engine,
  ...bolts,
  ...paint,
  ...machineGeometry,
  ...use,
  ...electrics,
  ...shelves,
};

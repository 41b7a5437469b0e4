/** A spec that is read with an instrument, and around which value. */
export interface MeasuredSpec {
  readonly key: string;
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  readonly value: number;
  readonly spread: number;
  readonly decimals: number;
  readonly instrument: string;
}

/** A spec that is worked out; its inputs are keys of the same system, or values with units. */
export interface DerivedSpec {
  readonly key: string;
  readonly name: string;
  readonly quantity: string;
  readonly unit: string;
  readonly calc?: string;
  readonly formula?: string;
  readonly inputs: Readonly<Record<string, string | readonly string[]>>;
  readonly carried?: readonly string[];
}

/** Eight specs that are measured together, and sixteen that follow from them, some of these from one another. */
export interface SystemPlan {
  readonly measured: readonly MeasuredSpec[];
  readonly derived: readonly DerivedSpec[];
}

const mass = { quantity: 'mass', unit: 'kg' };
const length = { quantity: 'length', unit: 'mm' };
const share = { quantity: 'ratio', unit: '%' };
const pressure = { quantity: 'pressure', unit: 'bar' };

const load = (key: string, value: number): MeasuredSpec => ({
  ...mass,
  ...{ key, name: `Load ${key}`, value, spread: 1.5, decimals: 0, instrument: 'scale' },
});
const tape = (key: string, name: string, value: number): MeasuredSpec => ({
  ...length,
  ...{ key, name, value, spread: 0.8, decimals: 0, instrument: 'tape' },
});
const bore = (key: string, name: string, value: number): MeasuredSpec => ({
  ...length,
  ...{ key, name, value, spread: 0.01, decimals: 2, instrument: 'bore-gauge' },
});
const gauge = (key: string, name: string, value: number): MeasuredSpec => ({
  ...pressure,
  ...{ key, name, value, spread: 0.1, decimals: 1, instrument: 'pressure-gauge' },
});

const corners = { W_LF: 'lf', W_RF: 'rf', W_LR: 'lr', W_RR: 'rr' };

/** Four feet on scales, and the frame between them. */
export const standing: SystemPlan = {
  measured: [
    ...[load('lf', 402), load('rf', 411), load('lr', 298), load('rr', 307)],
    ...[tape('base', 'Distance of the feet', 2284), tape('track', 'Width of the feet', 1496)],
    ...[tape('diagonal-a', 'First diagonal', 2731), tape('diagonal-b', 'Second diagonal', 2729)],
  ],
  derived: [
    { key: 'front', name: 'Front load', ...mass, formula: 'a + b', inputs: { a: 'lf', b: 'rf' } },
    { key: 'rear', name: 'Rear load', ...mass, formula: 'a + b', inputs: { a: 'lr', b: 'rr' } },
    {
      ...{ key: 'total', name: 'Total load', ...mass },
      ...{ formula: 'f + r', inputs: { f: 'front', r: 'rear' } },
    },
    { key: 'left', name: 'Share on the left', ...share, calc: 'side-share', inputs: corners },
    { key: 'cross', name: 'Cross weight', ...share, calc: 'cross-weight', inputs: corners },
    {
      ...{ key: 'front-share', name: 'Share in front', ...share },
      ...{ calc: 'axle-share', inputs: { W: 'front', others: ['rear'] } },
    },
    {
      ...{ key: 'along', name: 'Centre, along', ...length, calc: 'cg-along' },
      ...{ inputs: { L: 'base', Wf: 'front', Wr: 'rear' }, carried: ['L'] },
    },
    {
      ...{ key: 'across', name: 'Centre, across', ...length, calc: 'cg-across' },
      ...{ inputs: { ...corners, t_f: 'track', t_r: 'track' }, carried: ['t_f', 't_r'] },
    },
    {
      ...{ key: 'square', name: 'Difference of the diagonals', ...length },
      ...{ calc: 'squareness-diagonals', inputs: { d_1: 'diagonal-a', d_2: 'diagonal-b' } },
    },
    {
      ...{ key: 'margin', name: 'Load left to the plate', ...mass },
      ...{ formula: 'P - W', inputs: { P: '1800 kg', W: 'total' } },
    },
    {
      ...{ key: 'slack', name: 'Share left to the plate', ...share },
      ...{ formula: 'm/W', inputs: { m: 'margin', W: 'total' } },
    },
    {
      ...{ key: 'line-load', name: 'Load on a metre', quantity: 'mass-per-length', unit: 'kg/m' },
      ...{ formula: 'W/l', inputs: { W: 'total', l: 'base' }, carried: ['l'] },
    },
    {
      ...{ key: 'lean', name: 'Right side less left', ...mass },
      ...{ formula: 'b + d - a - c', inputs: { a: 'lf', b: 'rf', c: 'lr', d: 'rr' } },
    },
    {
      ...{ key: 'skew', name: 'Skew of the frame', quantity: 'angle', unit: '°' },
      ...{ formula: 'atan((a - b)/w)', inputs: { a: 'diagonal-a', b: 'diagonal-b', w: 'track' } },
    },
    {
      ...{ key: 'stance', name: 'Distance over width', quantity: 'ratio', unit: '1' },
      ...{ formula: 'l/w', inputs: { l: 'base', w: 'track' } },
    },
    {
      ...{ key: 'corner', name: 'Diagonal by sum', ...length },
      ...{ formula: 'sqrt(l^2 + w^2)', inputs: { l: 'base', w: 'track' } },
    },
  ],
};

/** A bore at four depths, what turns in it, and the pressure it holds. */
export const turning: SystemPlan = {
  measured: [
    ...[1, 2, 3, 4].map((place) => bore(`bore-${place}`, `Bore at place ${place}`, 68.02)),
    ...[bore('journal', 'Journal', 67.95), tape('stroke', 'Stroke', 90)],
    ...[gauge('press-a', 'Pressure, cold', 9.1), gauge('press-b', 'Pressure, warm', 8.9)],
  ],
  derived: [
    ...['mean', 'least', 'spread'].map((kind) => ({
      ...{ key: kind, name: `Bore, ${kind}`, ...length, calc: `place-${kind}` },
      inputs: { places: ['bore-1', 'bore-2', 'bore-3', 'bore-4'] },
    })),
    {
      ...{ key: 'clearance', name: 'Clearance', ...length },
      ...{ formula: 'b - j', inputs: { b: 'mean', j: 'journal' }, carried: ['j'] },
    },
    {
      ...{ key: 'offset', name: 'Eccentricity', ...length },
      ...{ calc: 'eccentricity', inputs: { TIR: 'spread' } },
    },
    {
      ...{ key: 'taper', name: 'Taper', quantity: 'slope', unit: 'mm/m' },
      ...{ calc: 'taper-two-collars', inputs: { D1: 'bore-1', D2: 'bore-4', L: 'stroke' } },
      carried: ['L'],
    },
    {
      ...{ key: 'wear', name: 'Thickness lost', ...share },
      ...{ calc: 'sheet-loss', inputs: { t_nom: '68.2 mm', t: 'least' } },
    },
    {
      ...{ key: 'press-spread', name: 'Spread of the pressure', ...share },
      ...{ calc: 'compression-spread', inputs: { pressures: ['press-a', 'press-b'] } },
    },
    {
      ...{ key: 'press-mean', name: 'Mean pressure', ...pressure },
      ...{ formula: '(a + b)/2', inputs: { a: 'press-a', b: 'press-b' } },
    },
    {
      ...{ key: 'press-drop', name: 'Loss of pressure', ...pressure },
      ...{ formula: 'a - b', inputs: { a: 'press-a', b: 'press-b' } },
    },
    {
      ...{ key: 'area', name: 'Area of the bore', quantity: 'area', unit: 'cm²' },
      ...{ formula: 'pi*d^2/4', inputs: { d: 'mean' } },
    },
    {
      ...{ key: 'thrust', name: 'Force on the piston', quantity: 'force', unit: 'N' },
      ...{ formula: 'p*A', inputs: { p: 'press-mean', A: 'area' } },
    },
    {
      ...{ key: 'swept', name: 'Swept volume', quantity: 'volume', unit: 'cm³' },
      ...{ formula: 'A*s', inputs: { A: 'area', s: 'stroke' } },
    },
    {
      ...{ key: 'oval', name: 'Ovality', ...length },
      ...{ formula: 'a - b', inputs: { a: 'bore-1', b: 'bore-2' } },
    },
    {
      ...{ key: 'fit', name: 'Clearance over bore', ...share },
      ...{ formula: 'c/d', inputs: { c: 'clearance', d: 'mean' } },
    },
    {
      ...{ key: 'square-stroke', name: 'Stroke over bore', quantity: 'ratio', unit: '1' },
      ...{ formula: 's/d', inputs: { s: 'stroke', d: 'mean' }, carried: ['s'] },
    },
  ],
};

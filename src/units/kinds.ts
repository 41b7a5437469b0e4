/** A unit of one quantity kind. `toBase` and `offset` are exact by definition: base = value × toBase + offset. */
export interface Unit {
  readonly symbol: string;
  /** Code of the Unified Code for Units of Measure, for data that leaves the site; absent where UCUM has none. */
  readonly ucum?: string;
  readonly toBase: number;
  readonly offset?: number;
  /** Value in the base unit is `reciprocal / value`, as for miles to the gallon against litres to 100 km. */
  readonly reciprocal?: number;
  /** The unit of the other system shown beside it. */
  readonly beside?: string;
  /** Other spellings that people type; they are accepted as hints only, never silently. */
  readonly alias?: readonly string[];
}

const INCH = 0.0254;
const POUND = 0.45359237;
const STANDARD_GRAVITY = 9.80665;
const POUND_FORCE = POUND * STANDARD_GRAVITY;
const FOOT = 0.3048;
const GALLON_UK = 0.00454609;
const GALLON_US = 231 * 0.000016387064;
const MILE = 1609.344;

/**
 * Quantity kinds and their units. The factors follow from the international yard and pound agreement (1959), the
 * conventional standard gravity 9.80665 m/s² and the litre as 1 dm³, as NIST SP 811 (2008) appendix B lists them.
 * Torque and energy share a dimension and are still two kinds; a temperature is not a temperature difference.
 */
export const quantityKinds = {
  length: [
    { symbol: 'm', ucum: 'm', toBase: 1, beside: 'ft' },
    { symbol: 'cm', ucum: 'cm', toBase: 0.01, beside: 'in' },
    { symbol: 'mm', ucum: 'mm', toBase: 0.001, beside: 'in' },
    {
      symbol: 'µm',
      ucum: 'um',
      toBase: 1e-6,
      beside: 'thou',
      alias: ['um', 'μm', 'micron', 'microns'],
    },
    { symbol: 'in', ucum: '[in_i]', toBase: INCH, beside: 'mm', alias: ['inch', 'inches', '"'] },
    { symbol: 'thou', ucum: '[mil_i]', toBase: 0.0000254, beside: 'µm', alias: ['mil'] },
    { symbol: 'ft', ucum: '[ft_i]', toBase: FOOT, beside: 'm', alias: ['feet', 'foot'] },
    { symbol: 'km', ucum: 'km', toBase: 1000, beside: 'mi' },
    { symbol: 'mi', ucum: '[mi_i]', toBase: MILE, beside: 'km', alias: ['mile', 'miles'] },
  ],
  area: [
    { symbol: 'm²', ucum: 'm2', toBase: 1, alias: ['m2'] },
    { symbol: 'cm²', ucum: 'cm2', toBase: 1e-4, alias: ['cm2'] },
    { symbol: 'mm²', ucum: 'mm2', toBase: 1e-6, alias: ['mm2'] },
    { symbol: 'in²', ucum: '[in_i]2', toBase: INCH * INCH, beside: 'mm²', alias: ['in2', 'sq in'] },
    { symbol: 'ft²', ucum: '[ft_i]2', toBase: FOOT * FOOT, beside: 'm²', alias: ['ft2', 'sq ft'] },
  ],
  volume: [
    {
      symbol: 'L',
      ucum: 'L',
      toBase: 0.001,
      beside: 'gal(UK)',
      alias: ['l', 'litre', 'litres', 'liter'],
    },
    { symbol: 'mL', ucum: 'mL', toBase: 1e-6, alias: ['ml'] },
    { symbol: 'cm³', ucum: 'cm3', toBase: 1e-6, alias: ['cc', 'cm3'] },
    { symbol: 'gal(UK)', ucum: '[gal_br]', toBase: GALLON_UK, beside: 'L' },
    { symbol: 'gal(US)', ucum: '[gal_us]', toBase: GALLON_US, beside: 'L' },
  ],
  mass: [
    { symbol: 'kg', ucum: 'kg', toBase: 1, beside: 'lb', alias: ['kgs', 'kilo'] },
    { symbol: 'g', ucum: 'g', toBase: 0.001 },
    { symbol: 't', ucum: 't', toBase: 1000, beside: 'lb' },
    { symbol: 'lb', ucum: '[lb_av]', toBase: POUND, beside: 'kg', alias: ['lbs', 'pounds'] },
  ],
  'mass-per-length': [
    { symbol: 'kg/m', ucum: 'kg/m', toBase: 1, beside: 'lb/ft' },
    { symbol: 'lb/ft', ucum: '[lb_av]/[ft_i]', toBase: POUND / FOOT, beside: 'kg/m' },
  ],
  density: [{ symbol: 'kg/L', ucum: 'kg/L', toBase: 1000 }],
  force: [
    { symbol: 'N', ucum: 'N', toBase: 1, beside: 'lbf' },
    { symbol: 'kN', ucum: 'kN', toBase: 1000, beside: 'lbf' },
    { symbol: 'lbf', ucum: '[lbf_av]', toBase: POUND_FORCE, beside: 'N' },
  ],
  torque: [
    { symbol: 'N·m', ucum: 'N.m', toBase: 1, beside: 'lbf·ft', alias: ['Nm', 'N.m', 'N m'] },
    {
      symbol: 'lbf·ft',
      ucum: '[lbf_av].[ft_i]',
      toBase: POUND_FORCE * FOOT,
      beside: 'N·m',
      alias: ['lb-ft', 'ft-lb', 'ftlb', 'lbft', 'lbf.ft'],
    },
    {
      symbol: 'lbf·in',
      ucum: '[lbf_av].[in_i]',
      toBase: POUND_FORCE * INCH,
      beside: 'N·m',
      alias: ['in-lb', 'lb-in'],
    },
  ],
  stiffness: [
    { symbol: 'N/mm', ucum: 'N/mm', toBase: 1000, beside: 'lbf/in' },
    {
      symbol: 'lbf/in',
      ucum: '[lbf_av]/[in_i]',
      toBase: POUND_FORCE / INCH,
      beside: 'N/mm',
      alias: ['lb/in'],
    },
  ],
  damping: [
    {
      symbol: 'N·s/m',
      ucum: 'N.s/m',
      toBase: 1,
      beside: 'lbf·s/in',
      alias: ['Ns/m', 'N.s/m', 'N s/m'],
    },
    {
      symbol: 'lbf·s/in',
      ucum: '[lbf_av].s/[in_i]',
      toBase: POUND_FORCE / INCH,
      beside: 'N·s/m',
      alias: ['lb-s/in', 'lbf.s/in'],
    },
  ],
  pressure: [
    { symbol: 'bar', ucum: 'bar', toBase: 1e5, beside: 'psi', alias: ['bars'] },
    { symbol: 'kPa', ucum: 'kPa', toBase: 1000, beside: 'psi', alias: ['kpa'] },
    { symbol: 'MPa', ucum: 'MPa', toBase: 1e6, beside: 'psi' },
    {
      symbol: 'psi',
      ucum: '[psi]',
      toBase: POUND_FORCE / (INCH * INCH),
      beside: 'bar',
      alias: ['PSI'],
    },
  ],
  temperature: [
    { symbol: '°C', ucum: 'Cel', toBase: 1, offset: 273.15, beside: '°F', alias: ['C', 'degC'] },
    {
      symbol: '°F',
      ucum: '[degF]',
      toBase: 5 / 9,
      offset: 273.15 - 160 / 9,
      beside: '°C',
      alias: ['F', 'degF'],
    },
  ],
  'temperature-difference': [
    { symbol: 'K', ucum: 'K', toBase: 1 },
    // UCUM's [degF] is a point on a scale with an offset; an interval as wide is a degree Rankine.
    { symbol: 'Δ°F', ucum: '[degR]', toBase: 5 / 9, beside: 'K' },
  ],
  angle: [
    { symbol: '°', ucum: 'deg', toBase: Math.PI / 180, alias: ['deg', 'degree', 'degrees'] },
    { symbol: 'arcmin', ucum: "'", toBase: Math.PI / 10_800, alias: ["'", 'min'] },
    { symbol: 'rad', ucum: 'rad', toBase: 1 },
  ],
  slope: [
    { symbol: 'mm/m', ucum: 'mm/m', toBase: 1e-3 },
    { symbol: 'µm/m', ucum: 'um/m', toBase: 1e-6, alias: ['um/m', 'μm/m'] },
  ],
  time: [
    { symbol: 's', ucum: 's', toBase: 1 },
    { symbol: 'min', ucum: 'min', toBase: 60 },
    { symbol: 'h', ucum: 'h', toBase: 3600 },
  ],
  speed: [
    { symbol: 'km/h', ucum: 'km/h', toBase: 1 / 3.6, beside: 'mph', alias: ['kph', 'kmh'] },
    { symbol: 'm/s', ucum: 'm/s', toBase: 1 },
    { symbol: 'mph', ucum: '[mi_i]/h', toBase: 0.44704, beside: 'km/h' },
  ],
  'rotational-speed': [
    { symbol: 'rpm', ucum: '{rev}/min', toBase: Math.PI / 30, alias: ['r/min', 'RPM'] },
  ],
  frequency: [
    { symbol: 'Hz', ucum: 'Hz', toBase: 1 },
    { symbol: 'kHz', ucum: 'kHz', toBase: 1000 },
  ],
  power: [
    { symbol: 'kW', ucum: 'kW', toBase: 1000, beside: 'hp' },
    { symbol: 'W', ucum: 'W', toBase: 1 },
    {
      symbol: 'hp',
      ucum: '[HP]',
      toBase: 550 * POUND_FORCE * FOOT,
      beside: 'kW',
      alias: ['HP', 'bhp'],
    },
    { symbol: 'PS', toBase: 75 * STANDARD_GRAVITY, beside: 'kW' },
  ],
  'specific-power': [
    { symbol: 'W/kg', ucum: 'W/kg', toBase: 1 },
    { symbol: 'kW/t', ucum: 'kW/t', toBase: 1 },
  ],
  voltage: [
    { symbol: 'V', ucum: 'V', toBase: 1 },
    { symbol: 'mV', ucum: 'mV', toBase: 0.001 },
  ],
  current: [
    { symbol: 'A', ucum: 'A', toBase: 1 },
    { symbol: 'mA', ucum: 'mA', toBase: 0.001 },
  ],
  resistance: [
    { symbol: 'Ω', ucum: 'Ohm', toBase: 1, alias: ['ohm', 'Ohm'] },
    { symbol: 'kΩ', ucum: 'kOhm', toBase: 1000, alias: ['kohm'] },
    { symbol: 'MΩ', ucum: 'MOhm', toBase: 1e6, alias: ['Mohm', 'megohm'] },
  ],
  charge: [{ symbol: 'A·h', ucum: 'A.h', toBase: 3600, alias: ['Ah'] }],
  flow: [{ symbol: 'L/min', ucum: 'L/min', toBase: 1 / 60_000, alias: ['l/min'] }],
  consumption: [
    {
      symbol: 'L/100km',
      ucum: 'L/(100.km)',
      toBase: 1e-8,
      beside: 'mpg(UK)',
      alias: ['L/100 km', 'l/100km'],
    },
    {
      symbol: 'mpg(UK)',
      ucum: '[mi_i]/[gal_br]',
      toBase: 1,
      reciprocal: GALLON_UK / MILE,
      beside: 'L/100km',
    },
    {
      symbol: 'mpg(US)',
      ucum: '[mi_i]/[gal_us]',
      toBase: 1,
      reciprocal: GALLON_US / MILE,
      beside: 'L/100km',
    },
  ],
  'spreading-rate': [
    { symbol: 'm²/L', ucum: 'm2/L', toBase: 1000, beside: 'ft²/gal(US)', alias: ['m2/L', 'm²/l'] },
    {
      symbol: 'ft²/gal(US)',
      ucum: '[ft_i]2/[gal_us]',
      toBase: (FOOT * FOOT) / GALLON_US,
      beside: 'm²/L',
      alias: ['ft²/gal', 'ft2/gal', 'sq ft/gal'],
    },
  ],
  illuminance: [{ symbol: 'lx', ucum: 'lx', toBase: 1, alias: ['lux'] }],
  'sound-level': [{ symbol: 'dB(A)', ucum: 'dB', toBase: 1, alias: ['dBA', 'dB'] }],
  ratio: [
    { symbol: '1', ucum: '1', toBase: 1 },
    { symbol: '%', ucum: '%', toBase: 0.01 },
  ],
  count: [{ symbol: 'count', ucum: '{count}', toBase: 1 }],
} as const satisfies Record<string, readonly Unit[]>;

export type QuantityKind = keyof typeof quantityKinds;

/** Names of all quantity kinds, as they are typed in a ledger. */
export const kindNames = Object.keys(quantityKinds) as QuantityKind[];

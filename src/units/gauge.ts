import type { NoQuantity, Quantity } from './quantity.ts';

/** The thickness that a sheet gauge stands for, in inches as the tables are kept. */
export interface Gauge extends Quantity {
  /** Which table it is from and how it comes about, for the reader. */
  readonly note: string;
}

interface GaugeTable {
  readonly from: number;
  readonly to: number;
  readonly thickness: (gauge: number) => number;
  readonly note: (gauge: number) => string;
  /** Other words for the material; they are accepted as hints only, never silently. */
  readonly alias: readonly string[];
}

/** Weight of bare steel sheet, gauges 3 to 38, in ounces to the square foot: Manufacturers' Standard Gauge for Sheet Steel. */
const STEEL_OUNCES = [
  160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60, 50, 45, 40, 36, 32, 28, 24, 22, 20, 18, 16, 14,
  12, 11, 10, 9, 8, 7, 6.5, 6, 5.5, 5, 4.5, 4.25, 4,
] as const;

/** The convention of that gauge: an inch of sheet weighs 41.82 lb/ft² (501.84 lb/ft³), a little more than an inch of steel does. */
const STEEL_POUNDS_TO_INCH = 41.82;

/**
 * Galvanized sheet gauge, 8 to 30, in inches with the zinc on both sides: nominal thicknesses of the SMACNA table
 * of galvanized sheet, after ASTM A924. They are the bare sheet's weight and 2½ oz/ft² more, over the same 41.82.
 */
const GALVANIZED_INCHES = [
  0.1681, 0.1532, 0.1382, 0.1233, 0.1084, 0.0934, 0.0785, 0.071, 0.0635, 0.0575, 0.0516, 0.0456,
  0.0396, 0.0366, 0.0336, 0.0306, 0.0276, 0.0247, 0.0217, 0.0202, 0.0187, 0.0172, 0.0157,
] as const;

const steelPounds = (gauge: number) => (STEEL_OUNCES[gauge - 3] ?? Number.NaN) / 16;

const tables: Readonly<Record<string, GaugeTable>> = {
  steel: {
    from: 3,
    to: 38,
    thickness: (gauge) => steelPounds(gauge) / STEEL_POUNDS_TO_INCH,
    note: (gauge) =>
      `Manufacturers’ Standard Gauge for Sheet Steel: ${steelPounds(gauge)} lb/ft² ÷ ${STEEL_POUNDS_TO_INCH} lb/ft² per inch`,
    alias: ['mild steel', 'bare steel', 'black steel', 'cold rolled steel', 'steel sheet'],
  },
  galvanized: {
    from: 8,
    to: 30,
    thickness: (gauge) => GALVANIZED_INCHES[gauge - 8] ?? Number.NaN,
    note: () => 'galvanized sheet gauge, nominal (ASTM A924), with the zinc on both sides',
    alias: ['galvanised', 'galv', 'zinc-coated', 'galvanized steel', 'galvanised steel'],
  },
  aluminium: {
    from: 3,
    to: 36,
    thickness: (gauge) => 0.005 * 92 ** ((36 - gauge) / 39),
    note: (gauge) =>
      `American Wire Gauge (Brown & Sharpe), ASTM B258: 0.005 in · 92^((36 − ${gauge})/39)`,
    alias: ['aluminum', 'alu', 'al', 'alloy'],
  },
};

/** The tables are published to a ten-thousandth of an inch. */
const DECIMALS = 4;

/**
 * Reads a sheet gauge as a thickness: `18 ga steel`, `16 ga galvanized`, `20 ga aluminium`.
 * One number means three thicknesses, so a gauge without its material is refused.
 */
export function readGauge(text: string): Gauge | NoQuantity {
  const match = /^(\d+)\s*(ga|gauge|gage)\b\.?\s*(.*)$/i.exec(text.trim());
  if (!match)
    return {
      wrong: 'is not a sheet gauge',
      fix: 'write it like "18 ga steel", whole numbers only',
    };

  const [, digits = '', , typed = ''] = match;
  const gauge = Number(digits);
  if (typed === '') return withoutMaterial(gauge);

  const material = materialOf(typed);
  if (material === undefined)
    return {
      wrong: `has no gauge table for "${typed}"`,
      fix: `name one of ${Object.keys(tables).join(', ')}, or write the thickness, like "1.2 mm"`,
    };
  if (text !== `${digits} ga ${material}`)
    return { wrong: 'is not how a gauge is written here', fix: `write "${gauge} ga ${material}"` };

  const table = tables[material] as GaugeTable;
  if (gauge < table.from || gauge > table.to)
    return {
      wrong: `is outside the table: ${material} has ${table.from} to ${table.to} ga`,
      fix: 'write the thickness, like "1.2 mm"',
    };
  return {
    value: table.thickness(gauge),
    unit: 'in',
    decimals: DECIMALS,
    note: table.note(gauge),
  };
}

function withoutMaterial(gauge: number): NoQuantity {
  const known = Object.entries(tables).filter(([, { from, to }]) => gauge >= from && gauge <= to);
  if (known.length === 0)
    return {
      wrong: 'is a gauge without a material, and in no table',
      fix: 'write the thickness, like "1.2 mm"',
    };
  const meanings = known.map(
    ([material, { thickness }]) => `${thickness(gauge).toFixed(DECIMALS)} in of ${material}`,
  );
  return {
    wrong: `is a gauge without a material: it may be ${meanings.join(', ')}`,
    fix: `write ${known.map(([material]) => `"${gauge} ga ${material}"`).join(' or ')}`,
  };
}

function materialOf(typed: string): string | undefined {
  const folded = typed.toLowerCase().replace(/\s+/g, ' ');
  return Object.keys(tables).find(
    (material) => material === folded || tables[material]?.alias.includes(folded),
  );
}

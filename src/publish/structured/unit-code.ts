import { ucumOf } from '../../units/unit.ts';

/** Common codes of UN/CEFACT Recommendation 20 by the UCUM code of the unit. */
const COMMON: Readonly<Record<string, string>> = {
  mm: 'MMT',
  cm: 'CMT',
  m: 'MTR',
  km: 'KMT',
  um: '4H',
  '[in_i]': 'INH',
  '[ft_i]': 'FOT',
  '[mi_i]': 'SMI',
  '[mil_i]': '77',
  mm2: 'MMK',
  m2: 'MTK',
  L: 'LTR',
  mL: 'MLT',
  kg: 'KGM',
  g: 'GRM',
  t: 'TNE',
  '[lb_av]': 'LBR',
  'kg/m': 'KL',
  N: 'NEW',
  kN: 'B47',
  'N.m': 'NU',
  bar: 'BAR',
  kPa: 'KPA',
  MPa: 'MPA',
  '[psi]': 'PS',
  Cel: 'CEL',
  K: 'KEL',
  deg: 'DD',
  V: 'VLT',
  A: 'AMP',
  mA: '4K',
  Ohm: 'OHM',
  W: 'WTT',
  kW: 'KWT',
  Hz: 'HTZ',
  'km/h': 'KMH',
  h: 'HUR',
  min: 'MIN',
  s: 'SEC',
  '%': 'P1',
  '1': 'C62',
  '{rev}/min': 'RPM',
};

/**
 * The unit of a value for `unitCode` of schema.org: the common code of UN/CEFACT where there is one, else the UCUM code with
 * the name of that system before it, as schema.org asks of other codes.
 */
export function unitCode(unit: string): string | undefined {
  const ucum = ucumOf(unit);
  return ucum && (COMMON[ucum] ?? `UCUM:${ucum}`);
}

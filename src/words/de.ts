import { calc } from './de/calc.ts';
import { dossier } from './de/dossier.ts';
import { finding } from './de/finding.ts';
import { general } from './de/general.ts';
import { ledger } from './de/ledger.ts';
import { log } from './de/log.ts';
import { marks } from './de/marks.ts';
import { measure } from './de/measure.ts';
import { method } from './de/method.ts';
import { money } from './de/money.ts';
import { parts } from './de/parts.ts';
import { photos } from './de/photos.ts';
import { plan } from './de/plan.ts';
import { sheet } from './de/sheet.ts';
import { shop } from './de/shop.ts';
import type { Words } from './keys.ts';

/** German. */
export const de: Words = {
  ledger,
  general,
  calc,
  money,
  measure,
  plan,
  parts,
  photos,
  dossier,
  log,
  marks,
  finding,
  sheet,
  shop,
  method,
};

import { calc } from './en/calc.ts';
import { dossier } from './en/dossier.ts';
import { finding } from './en/finding.ts';
import { general } from './en/general.ts';
import { ledger } from './en/ledger.ts';
import { log } from './en/log.ts';
import { marks } from './en/marks.ts';
import { measure } from './en/measure.ts';
import { method } from './en/method.ts';
import { money } from './en/money.ts';
import { parts } from './en/parts.ts';
import { photos } from './en/photos.ts';
import { plan } from './en/plan.ts';
import { sheet } from './en/sheet.ts';
import { shop } from './en/shop.ts';

/** English, the measure for all other languages. */
export const en = {
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

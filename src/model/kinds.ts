import type { z } from 'zod';
import type { CamelKeys } from './camel.ts';
import { instrumentSchema, phaseSchema, sourceSchema, specSchema } from './definitions.ts';
import { entrySchema } from './entry.ts';
import { photoSchema } from './photos.ts';
import { projectSchema } from './project.ts';
import {
  costSchema,
  hoursSchema,
  partSchema,
  rateSchema,
  readingSchema,
  searchSchema,
} from './rows.ts';
import { siteSchema } from './site.ts';

/** Kinds that are lists of records, by the stem of their files: `costs.csv`, `costs-2025.yaml`. */
export const listKinds = {
  sources: sourceSchema,
  phases: phaseSchema,
  specs: specSchema,
  instruments: instrumentSchema,
  photos: photoSchema,
  hours: hoursSchema,
  costs: costSchema,
  parts: partSchema,
  readings: readingSchema,
  rates: rateSchema,
  searches: searchSchema,
} as const;

export type ListKind = keyof typeof listKinds;

/** Kinds whose records are rows of the ledger; their ids are unique together, since an entry names rows of any kind. */
export const rowKinds = [
  'hours',
  'costs',
  'parts',
  'readings',
  'rates',
  'searches',
] as const satisfies readonly ListKind[];

/** Kinds of which there is one record. */
export const singleKinds = {
  site: siteSchema,
  project: projectSchema,
  entry: entrySchema,
} as const;

export const allKinds = { ...singleKinds, ...listKinds } as const;

type Record_<Schema extends z.ZodType> = CamelKeys<z.output<Schema>>;

export type Site = Record_<typeof siteSchema>;
export type ProjectInfo = Record_<typeof projectSchema>;
export type Source = Record_<typeof sourceSchema>;
export type Phase = Record_<typeof phaseSchema>;
export type Spec = Record_<typeof specSchema>;
export type Instrument = Record_<typeof instrumentSchema>;
export type PhotoRecord = Record_<typeof photoSchema>;
export type HoursRow = Record_<typeof hoursSchema>;
export type CostRecord = Record_<typeof costSchema>;
export type Part = Record_<typeof partSchema>;
export type Reading = Record_<typeof readingSchema>;
export type Rate = Record_<typeof rateSchema>;
export type Search = Record_<typeof searchSchema>;
export type EntryInfo = Record_<typeof entrySchema>;

/** The record type of each list kind. */
export type RecordOf<Kind extends ListKind> = Record_<(typeof listKinds)[Kind]>;

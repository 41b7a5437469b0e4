import type { z } from 'zod';
import type { CamelKeys } from './camel.ts';
import { candidateSchema, choiceSchema, groupSchema } from './choice-rows.ts';
import {
  budgetSchema,
  costSchema,
  orderSchema,
  rateSchema,
  withdrawalSchema,
} from './cost-rows.ts';
import { instrumentSchema, phaseSchema, sourceSchema, specSchema } from './definitions.ts';
import { entrySchema } from './entry.ts';
import { importSchema } from './imports.ts';
import { photoSchema } from './photos.ts';
import { projectSchema } from './project.ts';
import { hoursSchema, partSchema, readingSchema, searchSchema } from './rows.ts';
import { siteSchema } from './site.ts';
import { findingSchema, gradeSchema, surveySchema } from './survey-rows.ts';
import { preparationSchema, waitSchema } from './work-rows.ts';

/** Kinds that are lists of records, by the stem of their files: `costs.csv`, `costs-2025.yaml`. */
export const listKinds = {
  sources: sourceSchema,
  phases: phaseSchema,
  specs: specSchema,
  instruments: instrumentSchema,
  surveys: surveySchema,
  grades: gradeSchema,
  groups: groupSchema,
  photos: photoSchema,
  hours: hoursSchema,
  costs: costSchema,
  orders: orderSchema,
  budgets: budgetSchema,
  parts: partSchema,
  readings: readingSchema,
  rates: rateSchema,
  searches: searchSchema,
  findings: findingSchema,
  candidates: candidateSchema,
  choices: choiceSchema,
  preparations: preparationSchema,
  waits: waitSchema,
  withdrawals: withdrawalSchema,
} as const;

export type ListKind = keyof typeof listKinds;

/** Kinds whose records are rows of the ledger; their ids are unique together, since an entry names rows of any kind. */
export const rowKinds = [
  'hours',
  'costs',
  'orders',
  'budgets',
  'parts',
  'readings',
  'rates',
  'searches',
  'findings',
  'candidates',
  'choices',
  'preparations',
  'waits',
  'withdrawals',
] as const satisfies readonly ListKind[];

export type RowKind = (typeof rowKinds)[number];

/** Kinds of which there is one record. */
export const singleKinds = {
  site: siteSchema,
  project: projectSchema,
  entry: entrySchema,
} as const;

/** Kinds that are lists of the builder's own ways of working; nothing of them is published. */
export const homeKinds = { imports: importSchema } as const;

export const allKinds = { ...singleKinds, ...listKinds } as const;

type Record_<Schema extends z.ZodType> = CamelKeys<z.output<Schema>>;

export type ImportMapping = Record_<typeof importSchema>;
export type Site = Record_<typeof siteSchema>;
export type ProjectInfo = Record_<typeof projectSchema>;
export type Source = Record_<typeof sourceSchema>;
export type Phase = Record_<typeof phaseSchema>;
export type Spec = Record_<typeof specSchema>;
export type Instrument = Record_<typeof instrumentSchema>;
export type PhotoRecord = Record_<typeof photoSchema>;
export type HoursRow = Record_<typeof hoursSchema>;
export type CostRecord = Record_<typeof costSchema>;
export type Order = Record_<typeof orderSchema>;
export type BudgetLine = Record_<typeof budgetSchema>;
export type Withdrawal = Record_<typeof withdrawalSchema>;
export type Part = Record_<typeof partSchema>;
export type Reading = Record_<typeof readingSchema>;
export type Rate = Record_<typeof rateSchema>;
export type Search = Record_<typeof searchSchema>;
export type Survey = Record_<typeof surveySchema>;
export type Grade = Record_<typeof gradeSchema>;
export type Finding = Record_<typeof findingSchema>;
export type PartGroup = Record_<typeof groupSchema>;
export type Candidate = Record_<typeof candidateSchema>;
export type Choice = Record_<typeof choiceSchema>;
export type Preparation = Record_<typeof preparationSchema>;
export type Wait = Record_<typeof waitSchema>;
export type EntryInfo = Record_<typeof entrySchema>;

/** The record type of each list kind. */
export type RecordOf<Kind extends ListKind> = Record_<(typeof listKinds)[Kind]>;

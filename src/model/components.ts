import { costCategories } from './cost-rows.ts';

/** What a component's property may hold: an id of a kind, a list of them, one of some words, or free text. */
export interface PropRule {
  readonly required?: true;
  readonly ids?: string;
  readonly many?: true;
  readonly words?: readonly string[];
  readonly photo?: true;
  readonly moment?: true;
  /** Two places on a photo. */
  readonly points?: true;
  /** Stands alone, without a value. */
  readonly flag?: true;
}

/** States a part can be asked for by. */
export const partStates = [
  'noted',
  'wanted',
  'ordered',
  'in-hand',
  'fitted',
  'scrapped',
  'sold',
] as const;

/** Components an author may use in an entry, with their properties. The check, the docs and the site go by this table. */
export const entryComponents: Readonly<Record<string, Readonly<Record<string, PropRule>>>> = {
  Tally: {},
  Spec: {
    of: { required: true, ids: 'specs' },
    state: { words: ['as-found', 'before', 'after', 'final'] },
  },
  Change: { of: { required: true, ids: 'specs', many: true } },
  Working: { of: { required: true, ids: 'specs' } },
  Timeline: {},
  Forecast: {},
  Costs: {
    phase: { ids: 'phases' },
    source: { ids: 'sources' },
    category: { words: costCategories },
  },
  Budget: {},
  Parts: {
    source: { ids: 'sources' },
    system: { ids: 'systems' },
    phase: { ids: 'phases' },
    state: { words: partStates },
  },
  Donor: { of: { required: true, ids: 'donors' } },
  Survey: { of: { required: true, ids: 'surveys' }, system: { ids: 'systems' } },
  Choice: { of: { required: true, ids: 'parts-or-groups' } },
  Sources: {},
  Wanted: {},
  Hazard: {
    signal: { required: true, words: ['DANGER', 'WARNING', 'CAUTION'] },
    hazard: { required: true },
    harm: { required: true },
    avoid: { required: true },
  },
  Photo: {
    file: { required: true, photo: true },
    alt: {},
    caption: {},
    callouts: { flag: true },
  },
  PhotoPair: {
    before: { required: true, photo: true },
    after: { required: true, photo: true },
    caption: { required: true },
    'before-alt': {},
    'after-alt': {},
    'before-at': { points: true },
    'after-at': { points: true },
    reveal: { flag: true },
  },
  AtTime: { at: { required: true, moment: true } },
};

/** Schemes of links in an entry, and the kind of record each leads to. */
export const linkSchemes: Readonly<Record<string, string>> = {
  spec: 'specs',
  part: 'parts',
  phase: 'phases',
  source: 'sources',
  entry: 'entries',
  cost: 'costs',
  row: 'rows',
};

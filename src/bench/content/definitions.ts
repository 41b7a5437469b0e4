import type { Chance } from './chance.ts';
import { deed, sentence } from './prose.ts';
import type { Size } from './size.ts';
import { firstDay, later, phaseSpans } from './span.ts';
import { type DerivedSpec, type SystemPlan, standing, turning } from './systems.ts';
import { yamlText } from './yaml-text.ts';

/** A system of a made-up machine, by the name that its specs and parts have. */
export interface System {
  readonly id: string;
  readonly plan: SystemPlan;
}

export const systemsOf = ({ systems }: Size): System[] =>
  Array.from({ length: systems }, (_, index) => ({
    id: `group-${index + 1}`,
    plan: index % 2 === 0 ? standing : turning,
  }));

export const specId = ({ id }: System, key: string): string => `${id}-${key}`;

export const SITE: string = yamlText({
  title: 'Bench',
  address: 'https://bench.example/',
  language: 'en-GB',
  builder: 'A. Builder',
  tagline: 'Machines that nobody owns, with ledgers that nobody kept.',
});

export const WORK = ['strip', 'scrape', 'fit', 'measure', 'paint', 'travel'];
export const SOURCES = ['base', 'donor', 'new', 'made', 'repaired'];

/** The files beside the ledger. */
export function definitionFiles(
  number: number,
  systems: readonly System[],
  chance: Chance,
): Record<string, string> {
  return {
    'project.yaml': yamlText(project(number, chance)),
    'sources.yaml': yamlText(
      SOURCES.map((kind) => ({ id: kind, kind, name: `From ${kind}`, note: sentence(chance) })),
    ),
    'phases.yaml': yamlText(phases(chance)),
    'instruments.yaml': yamlText(INSTRUMENTS),
    'specs.yaml': yamlText(systems.flatMap((system) => specs(system, chance))),
  };
}

function project(number: number, chance: Chance) {
  return {
    name: `Bench engine ${number}`,
    summary: sentence(chance),
    machine: { maker: 'Invented', model: `Bench ${number}`, year: 1900 + number, kind: 'engine' },
    currency: 'GBP',
    timeZone: 'Europe/London',
    work: WORK,
    people: [{ id: 'builder', name: 'A. Builder' }, { id: 'helper' }],
    week: { tuesday: '1:30', thursday: '2:00', saturday: '5:00', sunday: '3:00' },
    away: [{ from: '2018-07-01', to: '2018-07-20', why: 'a summer away' }],
    rules: { tools: 'in', labourRate: '14.00' },
  };
}

/** Each follows the one before; the last is not finished. */
function phases(chance: Chance) {
  return phaseSpans.map(({ id, from, to }, index) => ({
    id,
    name: `Phase ${index + 1}`,
    summary: sentence(chance),
    'planned-start': from,
    'planned-finish': later(to, -chance.whole(0, 40)),
    'planned-hours': `${chance.whole(300, 700)}:00`,
    ...(index > 0 ? { after: [`phase-${index}`] } : {}),
    ...(index < phaseSpans.length - 1 ? { finished: to, note: deed(chance) } : {}),
  }));
}

const INSTRUMENTS = [
  {
    ...{ id: 'scale', name: 'Platform scale', quantity: 'mass', step: '1 kg' },
    ...{ 'stated-error': '2 kg', 'certificate-u': '1 kg', 'certificate-k': 2 },
  },
  {
    ...{ id: 'tape', name: 'Steel tape', quantity: 'length', step: '1 mm' },
    'stated-error': '1.5 mm',
  },
  {
    ...{ id: 'bore-gauge', name: 'Bore gauge', quantity: 'length', step: '0.01 mm' },
    ...{ 'stated-error': '0.02 mm', calibrated: firstDay },
  },
  {
    ...{ id: 'pressure-gauge', name: 'Pressure gauge', quantity: 'pressure', step: '0.1 bar' },
    'stated-error': '0.2 bar',
  },
];

function specs(system: System, chance: Chance) {
  const { measured, derived } = system.plan;
  const about = () => `${sentence(chance)} ${sentence(chance)}`;
  return [
    ...measured.map(({ key, name, quantity, unit, value, spread }) => ({
      ...{ id: specId(system, key), name: `${name}, ${system.id}`, about: about(), quantity, unit },
      system: system.id,
      ...(chance.happens(0.5) ? { max: `${Math.ceil(value + 4 * spread)} ${unit}` } : {}),
    })),
    ...derived.map(({ key, name, ...spec }) => ({
      ...{ id: specId(system, key), name: `${name}, ${system.id}`, about: about() },
      ...{ system: system.id, ...spec, inputs: inputs(system, spec) },
    })),
  ];
}

/** Inputs by the names that specs have in the whole project. */
function inputs(system: System, spec: Pick<DerivedSpec, 'inputs'>) {
  const named = (text: string) => (/^\d/.test(text) ? text : specId(system, text));
  return Object.fromEntries(
    Object.entries(spec.inputs).map(([name, text]) => [
      name,
      typeof text === 'string' ? named(text) : text.map(named),
    ]),
  );
}

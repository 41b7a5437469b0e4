import type { Day } from '../../time/day.ts';
import type { Chance } from './chance.ts';
import { type System, specId } from './definitions.ts';
import { deed, heading, sentence } from './prose.ts';
import type { Session } from './sessions.ts';
import { later, phaseOn } from './span.ts';
import type { Cells } from './table-file.ts';
import { yamlText } from './yaml-text.ts';

/** What an entry may point at. */
export interface Told {
  readonly sessions: readonly Session[];
  readonly systems: readonly System[];
  readonly rows: Readonly<Record<string, readonly Cells[]>>;
  readonly photos: readonly string[];
}

export interface EntryFile {
  readonly name: string;
  readonly text: string;
}

/** Entries in order of date, each named by its day. */
export function entryFiles(dates: readonly Day[], told: Told, chance: Chance): EntryFile[] {
  const names = dates.map((date) => `${date}-${slug(heading(chance))}`);
  return dates.map((date, index) => {
    const since = dates[index - 1] ?? later(date, -30);
    const before = names[chance.whole(0, Math.max(0, index - 1))] ?? '';
    const scene = { date, since, before, told, chance, index };
    return { name: `${names[index]}.mdx`, text: `${front(scene)}\n${body(scene)}\n` };
  });
}

interface Scene {
  readonly date: Day;
  readonly since: Day;
  /** Name of an earlier entry, or of this one where there is none. */
  readonly before: string;
  readonly told: Told;
  readonly chance: Chance;
  readonly index: number;
}

const slug = (text: string) => text.toLowerCase().replace(/[^a-z0-9]+/g, '-');

/** Ids of rows of a kind since the entry before. */
function fresh({ told, since, date }: Scene, kind: string): string[] {
  return (told.rows[kind] ?? [])
    .filter((row) => row.recorded === undefined && row.date !== undefined)
    .filter((row) => String(row.date) > since && String(row.date) <= date)
    .map(({ id }) => String(id));
}

function front(scene: Scene): string {
  const { date, chance } = scene;
  const told = ['hours', 'costs', 'readings'].flatMap((kind) => fresh(scene, kind).slice(0, 8));
  const head = {
    ...{ title: heading(chance), date, phase: phaseOn(date), summary: sentence(chance) },
    ...(told.length > 0 ? { tells: told } : {}),
    tags: [chance.pick(['bores', 'paint', 'mistakes', 'bearings']), chance.pick(['cold', 'help'])],
  };
  return `---\n${yamlText(head)}---\n`;
}

/** Four to eight paragraphs, with as many figures in them as entries of the demo have. */
function body(scene: Scene): string {
  const { chance } = scene;
  const paragraphs = Array.from({ length: chance.whole(4, 8) }, () => paragraph(scene));
  const blocks = BLOCKS.filter(([share]) => chance.happens(share)).map(([, block]) => block(scene));
  const parts = paragraphs.flatMap((text, index) => [text, blocks[index] ?? '']);
  return [...parts, ...blocks.slice(paragraphs.length), '<Tally />']
    .filter((part) => part !== '')
    .join('\n\n');
}

function paragraph(scene: Scene): string {
  const { chance } = scene;
  const sentences = Array.from({ length: chance.whole(2, 5) }, () => sentence(chance));
  if (chance.happens(0.75)) sentences.splice(1, 0, figure(scene));
  if (chance.happens(0.6)) sentences.push(mention(scene));
  return sentences.join(' ');
}

/** The latest whole sessions by the day of the entry, a dozen of them. */
const recent = ({ told, date }: Scene) =>
  told.sessions.filter((one) => one.whole && one.date <= date).slice(-12);

function specOf(scene: Scene): string | undefined {
  const sessions = recent(scene);
  if (sessions.length === 0) return undefined;
  const { system } = scene.chance.pick(sessions);
  const { measured, derived } = system.plan;
  const keys = (scene.chance.happens(0.6) ? measured : derived).map(({ key }) => key);
  return specId(system, scene.chance.pick(keys));
}

function figure(scene: Scene): string {
  const spec = specOf(scene);
  if (spec === undefined) return sentence(scene.chance);
  return scene.chance.pick([
    `It reads <Spec of="${spec}" /> today, and I looked twice.`,
    `By the sheet it is <Spec of="${spec}" />, which is ${scene.chance.pick(['more', 'less'])} than hoped.`,
    `There was [one way to know](spec:${spec}): <Spec of="${spec}" />.`,
  ]);
}

/** A sentence with a link to a row, a part, a cost or an earlier entry. */
function mention(scene: Scene): string {
  const { chance, told, before, index } = scene;
  const parts = told.rows.parts ?? [];
  const cost = fresh(scene, 'costs')[0];
  const row = fresh(scene, 'readings')[0];
  const links = [
    `The [part in question](part:${chance.pick(parts).id}) can wait.`,
    `More of it hangs on [another](part:${chance.pick(parts).id}).`,
    ...(cost === undefined ? [] : [`It [cost something](cost:${cost}) too.`]),
    ...(row === undefined ? [] : [`The [first reading](row:${row}) said as much.`]),
    ...(index > 0 ? [`I had [written of it](entry:${before}) before.`] : []),
  ];
  return chance.pick(links);
}

/** A system that has been read before and after some work by the day. */
function changed({ told, date, chance }: Scene): string {
  const done = told.sessions.filter((one) => one.date <= date && one.state === 'after');
  if (done.length === 0) return '';
  const { system } = chance.pick(done.slice(-12));
  const keys = system.plan.measured.slice(0, chance.whole(1, 4)).map(({ key }) => key);
  return `<Change of={[${keys.map((key) => `"${specId(system, key)}"`).join(', ')}]} />`;
}

function working(scene: Scene): string {
  const spec = specOf(scene);
  return spec === undefined ? '' : `<Working of="${spec}" />`;
}

const hazard = ({ chance }: Scene) =>
  `<Hazard signal="${chance.pick(['DANGER', 'WARNING', 'CAUTION'])}" hazard="${deed(chance)}" harm="It can fall and crush a hand" avoid="Keep out from under it, and take your time" />`;

const photo = ({ told, chance }: Scene) =>
  told.photos.length === 0
    ? ''
    : `<Photo file="${chance.pick(told.photos)}" alt="${deed(chance)}" caption="${sentence(chance)}" />`;

/** Components that stand apart, and how many of the demo's entries have each. */
const BLOCKS: readonly (readonly [number, (scene: Scene) => string])[] = [
  [0.7, hazard],
  [0.5, photo],
  [0.45, changed],
  [0.3, ({ chance }) => `## ${heading(chance)}`],
  [0.1, () => '<Timeline />'],
  [0.08, ({ date }) => `<Costs phase="${phaseOn(date)}" />`],
  [0.1, ({ chance, told }) => `<Parts system="${chance.pick(told.systems).id}" />`],
  [0.08, () => '<Forecast />'],
  [0.08, working],
  [0.03, () => '<Budget />'],
  [0.03, () => '<Donor of="donor" />'],
  [0.03, () => '<Sources />'],
  [0.03, () => '<Wanted />'],
];

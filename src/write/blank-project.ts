import { addDays, type Day } from '../time/day.ts';
import { wordsOf } from './next-id.ts';
import { writeScalar } from './yaml-scalar.ts';

/** What has to be known of a machine before its log can begin. */
export interface ProjectStart {
  readonly name: string;
  readonly maker: string;
  readonly model: string;
  readonly year: string;
  readonly kind: string;
  readonly builder: string;
  readonly currency: string;
  readonly timeZone: string;
  readonly today: Day;
}

/** The files of a project in which nothing has happened yet, by their paths in its folder. */
export function blankProject(
  start: ProjectStart,
  language: string,
): Readonly<Record<string, string>> {
  return {
    'project.yaml': projectText(start, language),
    'sources.yaml': SOURCES,
    'phases.yaml': phasesText(start.today),
    'specs.yaml': SPECS,
    'instruments.yaml': INSTRUMENTS,
    'ledger/hours.csv': 'id,date,recorded,hours,phase,work,who,what\n',
    'ledger/costs.csv': 'id,date,recorded,amount,category,phase,what,supplier,receipt,note\n',
    'ledger/parts.csv':
      'id,name,system,source,phase,quantity,wanted,ordered,got,fitted,scrapped,note\n',
    'ledger/readings.csv': 'id,date,recorded,spec,state,values,unit,instrument,photo,note\n',
    'ledger/searches.csv': 'id,date,recorded,part,result,price,place,note\n',
  };
}

/** The address of a site until its builder writes one. */
export const PLACEHOLDER = 'https://my-log.example/';

/** The `site.yaml` of a content folder that has none. */
export function blankSite(start: ProjectStart, language: string): string {
  return `# yaml-language-server: $schema=.schema/site.json
# Name of the site, which may hold more machines than one. Change it as you like.
title: ${plain(`Build log of ${start.builder}`)}
# Where the site will be found. Change it before you publish.
address: ${PLACEHOLDER}
language: ${plain(language)}
builder: ${plain(start.builder)}
`;
}

function projectText(start: ProjectStart, language: string): string {
  const { name, maker, model, year, kind, builder, currency, timeZone } = start;
  const person = wordsOf(builder) || 'builder';
  return `${schema('project')}name: ${plain(name)}
# One sentence for lists and search machines. Change it to say what you want to do.
summary: Taken apart, measured and rebuilt, with hours and money written down on the day.
machine:
  maker: ${plain(maker)}
  model: ${plain(model)}
  year: ${plain(year)}
  kind: ${plain(kind)}
builder: ${plain(builder)}
currency: ${plain(currency)}
timeZone: ${plain(timeZone)}
${/-US$/.test(language) ? '# Gallons and what hangs on them stand beside metric values as the US has them.\notherUnits: us\n' : ''}# Kinds of work that rows of hours name. Add your own.
work: [survey, dismantling, cleaning, repair, fitting, electrical, paint, measuring, travel]
# Who works on it. Somebody without a name is shown as "helper".
people:
  - id: ${plain(person)}
    name: ${plain(builder)}${person === 'helper' ? '' : '\n  - id: helper'}
`;
}

const SOURCES = `${schema('sources')}# Where parts come from.
- id: base
  kind: base
  name: The machine itself
- id: new
  kind: new
  name: Bought new
- id: made
  kind: made
  name: Made for it
- id: repaired
  kind: repaired
  name: Mended and put back
`;

/** Stretches of work, with days and hours that are plainly a first guess. */
function phasesText(today: Day): string {
  const phases = [
    ['survey', 'Survey', 'What is there, what is missing, and every measure as found.', 0, 14, 10],
    ['strip', 'Taking apart', 'It comes apart, and each part is cleaned and judged.', 14, 56, 40],
    ['repair', 'Repair', 'What is worn, broken or gone is mended, made or found.', 56, 182, 120],
    ['assembly', 'Putting together', 'Everything goes back.', 182, 266, 80],
    ['proving', 'Proving', 'It is run, measured again and put right.', 266, 294, 20],
  ] as const;
  const texts = phases.map(
    ([id, name, summary, from, to, hours], index) => `- id: ${id}
  name: ${name}
  summary: ${summary}
  planned-start: ${addDays(today, from)}
  planned-finish: ${addDays(today, to)}
  planned-hours: "${hours}:00"
${index === 0 ? '' : `  after: [${phases[index - 1]?.[0]}]\n`}`,
  );
  return `${schema('phases')}# Stretches of the work. Days and hours are a first guess: change them.
${texts.join('')}`;
}

const SPECS = `${schema('specs')}# What you measure. This one only needs a tape measure; add what matters on your machine.
- id: overall-length
  name: Length over all
  about: From the foremost point to the rearmost one, along the middle. A first measure to begin with.
  quantity: length
  unit: mm
  system: whole-machine
`;

const INSTRUMENTS = `${schema('instruments')}# What you measure with. "step" is the smallest division, "stated-error" what its maker says it may be off.
- id: tape
  name: Tape measure
  quantity: length
  step: 1 mm
  stated-error: 1 mm
`;

function schema(kind: string): string {
  return `# yaml-language-server: $schema=../.schema/${kind}.json\n`;
}

function plain(text: string): string {
  return writeScalar(text, 'plain', 'block');
}

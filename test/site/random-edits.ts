import { appendFile, cp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** A change that a builder makes to a content folder with the projects `press` and `mill`; it leaves it sound. */
export interface Edit {
  readonly what: string;
  /** `n` tells one edit of a kind from another. */
  make(content: string, n: number): Promise<void>;
}

const PROJECTS = ['press', 'mill'];
const projectOf = (n: number) => PROJECTS[n % 2] as string;

function replaceIn(file: (n: number) => string, from: RegExp, to: (n: number) => string) {
  return async (content: string, n: number) => {
    const path = join(content, file(n));
    await writeFile(path, (await readFile(path, 'utf8')).replace(from, to(n)));
  };
}

/** Everything that a change can reach: one row, an earlier row, words, the site, a project's name, an entry more or less, a photo. */
export const edits: readonly Edit[] = [
  {
    what: 'a row of hours more',
    make: (content, n) =>
      appendFile(
        join(content, projectOf(n), 'ledger/hours.csv'),
        `x-${n},2025-05-0${1 + (n % 9)},1:30,rebuild,fit,,Fitted piece ${n}\n`,
      ),
  },
  {
    what: 'an earlier reading',
    make: replaceIn(
      (n) => `${projectOf(n)}/ledger/readings.csv`,
      /0\.41 0\.42 0\.4\d/,
      (n) => `0.41 0.42 0.4${n % 10}`,
    ),
  },
  {
    what: 'the name of a spec',
    make: replaceIn(
      (n) => `${projectOf(n)}/specs.yaml`,
      /name: Play.*/,
      (n) => `name: Play of the ram, ${n}`,
    ),
  },
  {
    what: 'the title of the site',
    make: replaceIn(
      () => 'site.yaml',
      /title: .*/,
      (n) => `title: A shed and ${n} machines`,
    ),
  },
  {
    what: 'the name of a project',
    make: replaceIn(
      (n) => `${projectOf(n)}/project.yaml`,
      /name: .*/,
      (n) => `name: Machine number ${n}`,
    ),
  },
  {
    what: 'an entry more, as a copy of another',
    async make(content, n) {
      const folder = join(content, projectOf(n), 'entries');
      const [first = ''] = (await readdir(folder)).sort();
      const text = await readFile(join(folder, first), 'utf8');
      await writeFile(
        join(folder, `2025-05-1${n % 10}-more-${n}.mdx`),
        text
          .replace(/title: .*/, `title: More ${n}`)
          .replace(/date: .*/, `date: 2025-05-1${n % 10}`),
      );
    },
  },
  {
    what: 'an entry less, where there are two',
    async make(content, n) {
      const folder = join(content, projectOf(n), 'entries');
      const [, second] = (await readdir(folder)).sort();
      if (second) await rm(join(folder, second));
    },
  },
  {
    what: 'a photo that nobody shows',
    make: (content, n) =>
      cp(
        join(content, 'press/photos/ram.jpg'),
        join(content, projectOf(n), `photos/unused-${n}.jpg`),
      ),
  },
];

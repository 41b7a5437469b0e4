import { newEntry } from './new-entry.ts';
import { newProject } from './new-project.ts';

const HELP = `npm run new -- project [options]
npm run new -- entry [project] "Title" [--date DAY] [--phase PHASE]

project  makes the folder of a machine with all files that it needs, and site.yaml where there is none. In a terminal it asks six
         questions; else they are options. A project that is there is never touched.
entry    makes entries/DAY-title.mdx: a draft that lists, in comments, rows and photos since the last entry that no entry tells yet.
         An entry that is there is never touched.

  npm run new -- project
  npm run new -- project --maker Ostermoor --model 65 --year 1951 --kind "bench lathe" --builder "Oran Kilbrack" --currency EUR
  npm run new -- entry "Cab off"
  npm run new -- entry ostermoor-65 "Nine steps down" --date 2026-01-10

--maker --model --year --kind --builder --currency   the six answers
--name       what the machine is called; else maker and model
--id         name of its folder, which is part of the address; else made of the name
--time-zone  like Europe/Dublin; else that of this computer
--language   of the site, where site.yaml is new, like en-GB; else that of this computer
--date       day of the entry; else today
--phase      phase of the entry; else that of the newest rows
Without a terminal nothing is asked.
Exit status: 0 written, 1 refused or incomplete, 2 wrong use.
`;

/** Makes a project or an entry to begin with. */
export async function main(args: readonly string[]): Promise<number> {
  const [what, ...rest] = args;
  if (args.includes('--help') || args.includes('-h')) {
    console.log(HELP);
    return 0;
  }
  const say = (text: string) => {
    console.error(`${text}\n\n${HELP}`);
    return 2;
  };
  if (what === undefined) return say('Say what to make: project or entry.');
  if (what === 'project') return newProject(rest, say);
  if (what === 'entry') return newEntry(rest, say);
  return say(`There is no "${what}" to make.`);
}

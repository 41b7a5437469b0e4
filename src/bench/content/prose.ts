import type { Chance } from './chance.ts';

const THINGS =
  'bearing cap,valve guide,rocker shaft,water jacket,oil gallery,flywheel,crosshead,guide bar,governor,end plate,cam follower,thrust washer,inlet trunk,cover plate,stud,gland,lever,hinge,bracket,drip tray'.split(
    ',',
  );
const TOOLS =
  'scraper,reamer,long bar,bench vice,hoist,wire brush,fine stone,soft hammer,surface plate,set of shims,hand press,straightedge'.split(
    ',',
  );
const SIGNS =
  'worn,bright,scored,rusty,oily,sound,cracked,plain,loose,tight,blue with heat,thinner than drawn,better than feared'.split(
    ',',
  );
const DEEDS =
  'cleaned,lifted,scraped,measured,turned,fitted,heated,drilled,blued,packed,levelled,taken down,put back'.split(
    ',',
  );
const WAYS =
  'slowly,twice,with some patience,by hand,before dinner,in the cold,with help,without a word,from the wrong side first,a little at a time'.split(
    ',',
  );
const PLACES =
  'on the bench,under the window,by the stove,at the back of the shed,on two trestles,near the door,in the yard'.split(
    ',',
  );
const REASONS =
  'the drawing says otherwise,nobody had looked there for thirty years,the gauge had been left in the sun,the seat was never flat,it had been put together dry,the first maker had used what was at hand,I had trusted my memory,the light was poor'.split(
    ',',
  );

type Template = (chance: Chance) => string;

const SENTENCES: readonly Template[] = [
  (c) => `The ${c.pick(THINGS)} was ${c.pick(DEEDS)} ${c.pick(WAYS)}, ${c.pick(PLACES)}.`,
  (c) =>
    `After ${c.whole(2, 40)} turns of the ${c.pick(TOOLS)} the ${c.pick(THINGS)} came free, ${c.pick(SIGNS)} and ${c.pick(SIGNS)}.`,
  (c) => `I had expected it ${c.pick(SIGNS)}; it was ${c.pick(SIGNS)}, because ${c.pick(REASONS)}.`,
  (c) =>
    `Nothing more was done to the ${c.pick(THINGS)} that day, since the ${c.pick(TOOLS)} was lent out.`,
  (c) =>
    `Where the ${c.pick(THINGS)} meets the ${c.pick(THINGS)} there is a step that a fingernail feels, and ${c.pick(REASONS)}.`,
  (c) =>
    `We ${c.pick(['tried', 'turned', 'marked', 'weighed', 'left'])} it ${c.pick(WAYS)} and then once more, ${c.pick(PLACES)}.`,
  (c) =>
    `That took ${c.whole(2, 9)} evenings, of which ${c.whole(1, 2)} went into looking for the ${c.pick(TOOLS)}.`,
  (c) => `The ${c.pick(THINGS)} is ${c.pick(SIGNS)} now, and it will do.`,
  (c) => `It could have been ${c.pick(DEEDS)} sooner, but ${c.pick(REASONS)}.`,
  (c) =>
    `A ${c.pick(TOOLS)} is no use here: the ${c.pick(THINGS)} leaves ${c.whole(3, 30)} mm of room and no more.`,
  (c) =>
    `My neighbour held the ${c.pick(THINGS)} while I ${c.pick(['drew', 'filed', 'scraped', 'counted', 'cursed'])}, and went home ${c.pick(['content', 'wet', 'late', 'none the wiser'])}.`,
  (c) =>
    `So the ${c.pick(THINGS)} goes back as it was, ${c.pick(SIGNS)} or not, until the ${c.pick(THINGS)} is done.`,
];

/** One made-up sentence. */
export const sentence = (chance: Chance): string => chance.pick(SENTENCES)(chance);

/** A made-up name of a part. */
export function partName(chance: Chance): string {
  const name = chance.pick(THINGS);
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** What was done, as a ledger row says it: a dozen words. */
export function deed(chance: Chance): string {
  const done = chance.pick(DEEDS);
  return `${done.charAt(0).toUpperCase()}${done.slice(1)} the ${chance.pick(THINGS)} ${chance.pick(WAYS)}; the ${chance.pick(THINGS)} is ${chance.pick(SIGNS)}, ${chance.pick(PLACES)}`;
}

/** A heading or a title of a few words. */
export function heading(chance: Chance): string {
  return `The ${chance.pick(THINGS)}, ${chance.pick(SIGNS)}`;
}

/** What a row says that was bought. */
export const purchase = (chance: Chance): string =>
  `${partName(chance)} with ${chance.whole(2, 24)} ${chance.pick(['studs', 'washers', 'shims', 'clips', 'rings'])}, ${chance.pick(SIGNS)}`;

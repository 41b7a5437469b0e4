import type { PartOnDay, Project } from '../book/types.ts';
import { escapeXml } from '../draw/svg.ts';
import type { Site } from '../model/kinds.ts';
import { showWritten } from '../money/written.ts';
import type { Hunt } from '../parts/hunt.ts';
import { newestOf, type Offer, wantedOn } from '../parts/wanted.ts';
import { type Day, showDay } from '../time/day.ts';
import { noonIn } from '../time/noon.ts';
import { tongueOf, type Words } from '../words/words.ts';
import type { Addresses } from './address.ts';
import { type FeedItem, writeFeed } from './atom-document.ts';

/** What is wanted and what is for sale in a project as an Atom feed (RFC 4287), what changed last first. */
export function wantedFeed(project: Project, site: Site, to: Addresses): string {
  const { wanted, offers } = wantedOn(project.now);
  const { words, tag: language } = tongueOf(site.language);
  const context = { project, site, to, language, words: words.parts.hunts };
  const items = [
    ...wanted.map((hunt) => wantedItem(hunt, context)),
    ...offers.map((offer) => offerItem(offer, context)),
  ].sort((a, b) => Date.parse(b.updated) - Date.parse(a.updated));
  const page = to.absolute(to.wanted(project));
  const head = {
    id: page,
    title: context.words.feed.title(project.info.name),
    language,
    // A feed without entries must have a date too (RFC 4287 §4.1.1).
    updated: items[0]?.updated ?? noonIn(project.info.timeZone, project.lastDay),
    author: project.info.builder ?? site.builder,
    self: to.absolute(to.wantedFeed(project)),
    alternate: page,
  };
  return writeFeed(head, items);
}

interface Context {
  readonly project: Project;
  readonly site: Site;
  readonly to: Addresses;
  readonly language: string;
  readonly words: Words['parts']['hunts'];
}

function wantedItem(hunt: Hunt, context: Context): FeedItem {
  const { item, since, tries } = hunt;
  const { language, words } = context;
  const { estimate } = item.part;
  const lookedFor = words.feed.lookedFor(showDay(since, language), tries.value);
  const amount = estimate && words.feed.mayCost(show(estimate, context));
  return makeItem(
    { item, word: 'wanted', since, updated: newestOf(hunt) },
    [lookedFor, amount],
    context,
  );
}

function offerItem({ item, since }: Offer, context: Context): FeedItem {
  const { asking } = item.part;
  const { feed } = context.words;
  const amount = asking ? feed.asking(show(asking, context)) : feed.makeAnOffer;
  return makeItem({ item, word: 'for-sale', since, updated: since }, [amount, undefined], context);
}

interface Told {
  readonly item: PartOnDay;
  readonly word: 'wanted' | 'for-sale';
  readonly since: Day;
  readonly updated: Day;
}

/** An entry's id is a tag URI (RFC 4151) of the day it was first wanted or offered and the part's id, which stay as they are. */
function makeItem(
  { item: { part }, word, since, updated }: Told,
  [first, second]: readonly [first: string, second: string | undefined],
  { project, site, to, words }: Context,
): FeedItem {
  const { timeZone, machine } = project.info;
  const alternate = to.absolute(to.part(project, part.id));
  const model = `${machine.maker} ${machine.model}`;
  const from = project.sources.find(({ id }) => id === part.source)?.name ?? part.source;
  const system = part.system.replaceAll('-', ' ');
  const isWanted = word === 'wanted';
  const { feed } = words;
  const of = isWanted ? feed.fits(machine.year, model, system) : feed.from(from, model, system);
  const { contact } = site;
  const answer = contact ? feed.answer(contact) : undefined;
  const lines = [of, first, second, part.note, answer].filter((line) => line !== undefined);
  return {
    id: `tag:${new URL(site.firstAddress ?? site.address).hostname},${since}:${project.id}/${word}/${part.id}`,
    title: isWanted ? feed.wanted(part.name) : feed.forSale(part.name),
    published: noonIn(timeZone, since),
    updated: noonIn(timeZone, updated),
    category: { term: word, label: isWanted ? words.wanted : words.forSale },
    alternate,
    summary: `${of} ${first}`,
    content: `${lines.map((line) => `<p>${escapeXml(line)}</p>`).join('')}<p><a href="${escapeXml(alternate)}">${escapeXml(part.name)}</a></p>`,
  };
}

function show(amount: Parameters<typeof showWritten>[0], { project, language }: Context): string {
  return showWritten(amount, { currency: project.currency, language });
}

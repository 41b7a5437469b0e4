import type { Book, Project } from '../book/types.ts';
import { hasBudget } from '../cost/budget-figures.ts';
import { escapeXml } from '../draw/svg.ts';
import { yearOf, yearsOf } from '../ledger/by-year.ts';
import { type Day, latestDay } from '../time/day.ts';
import type { Addresses } from './address.ts';
import { newestMark } from './ledger-marks.ts';
import { photoList } from './photo-list.ts';

/** A page of the site and the day it last changed. */
export interface SitePage {
  readonly path: string;
  readonly changed: Day | undefined;
}

/** Every page that search engines may list. */
export function sitePages(book: Book, to: Addresses): SitePage[] {
  const newest = latestDay(book.projects.map(({ lastDay }) => lastDay));
  const shared = [to.home(), to.method()].map((path) => ({ path, changed: newest }));
  const own = book.projects.flatMap((project) => [
    ...[
      to.project(project),
      to.log(project),
      to.backIndex(project),
      to.specs(project),
      to.costs(project),
      to.partCosts(project),
      ...project.sources
        .filter(({ kind }) => kind === 'donor')
        .map(({ id }) => to.donor(project, id)),
      ...(hasBudget(project) ? [to.budget(project)] : []),
      to.hours(project),
      to.plan(project),
      to.forecast(project),
      to.earnedValue(project),
      to.parts(project),
      to.sources(project),
      to.wanted(project),
      to.corrections(project),
      to.data(project),
      to.survey(project),
      to.choices(project),
      to.dossier(project),
    ].map((path) => ({ path, changed: project.lastDay })),
    ...(['costs', 'hours'] as const).flatMap((what) =>
      yearsOf(project[what]).map((year) => ({
        path: to.ledgerYear(project, what, year),
        changed: latestDay(
          project[what].map(({ date }) => date).filter((date) => yearOf(date) === year),
        ),
      })),
    ),
    ...project.now.parts.map(({ part, since }) => ({
      path: to.part(project, part.id),
      changed: since,
    })),
    ...(project.marks ? [{ path: to.marks(project), changed: newestMark(project)?.date }] : []),
    ...project.entries.map((entry) => ({ path: to.entry(project, entry), changed: entry.date })),
    ...photoPages(project, to),
    ...project.now.specs.map(({ spec, latest }) => ({
      path: to.spec(project, spec.id),
      changed: latest?.date,
    })),
  ]);
  return [...shared, ...own];
}

function photoPages(project: Project, to: Addresses): SitePage[] {
  const pages = photoList(project).map(({ name, record, entries }) => ({
    path: to.photo(project, name),
    changed: latestDay([record?.taken, ...entries.map(({ date }) => date)]),
  }));
  if (pages.length === 0) return [];
  return [{ path: to.photos(project), changed: project.lastDay }, ...pages];
}

/** The pages as a sitemap (sitemaps.org protocol 0.9); `lastmod` is the day of the content, not of the build. */
export function sitemap(pages: readonly SitePage[], to: Addresses): string {
  const urls = pages.map(
    ({ path, changed }) =>
      `  <url><loc>${escapeXml(to.absolute(path))}</loc>${changed ? `<lastmod>${changed}</lastmod>` : ''}</url>`,
  );
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...urls,
    '</urlset>',
    '',
  ].join('\n');
}

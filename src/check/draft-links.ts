import { type Problem, problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** A published entry links to entries that are published: a draft has no page, so that the link would lead to the log. */
export const linksLeadToNoDraft: Rule = ({ project }) => {
  const drafts = new Set(
    project.entries.filter(({ value }) => value.draft).map(({ slug }) => slug),
  );
  return project.entries
    .filter(({ value }) => !value.draft)
    .flatMap(({ body }) => body.links)
    .flatMap((link): Problem[] => {
      const slug = /^entry:(.+)$/.exec(link.url)?.[1] ?? '';
      if (!drafts.has(slug)) return [];
      const message = `the entry "${slug}" is a draft, so that this link leads to the log`;
      const fix = 'publish that entry too, or leave the link out until then';
      return [{ ...problemAt(link, 'link/draft', message, fix), level: 'warning' }];
    });
};

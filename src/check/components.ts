import { entryComponents, linkSchemes, type PropRule } from '../model/components.ts';
import { areApart, parseTwoPoints } from '../model/two-points.ts';
import type { ReadEntry } from '../read/content.ts';
import type { UsedComponent, UsedLink, WrittenProp } from '../read/mdx.ts';
import { suggest } from '../read/nearest.ts';
import { oneSlipFrom } from '../read/one-slip.ts';
import { type Problem, problemAt, withMend } from '../read/problem.ts';
import { parseMoment } from '../time/moment.ts';
import { checkHtml } from './html.ts';
import { unknownId } from './references.ts';
import type { Rule, RuleInput } from './rule.ts';

/** Every component in an entry exists, has the properties it needs, and names things that are there. */
export const componentsAreUsedRight: Rule = (input) =>
  input.project.entries.flatMap((entry) => [
    ...entry.body.components.flatMap((component) => checkComponent(component, entry, input)),
    ...entry.body.links.flatMap((link) => checkLink(link, input)),
  ]);

function checkComponent(component: UsedComponent, entry: ReadEntry, input: RuleInput): Problem[] {
  const { name } = component;
  if (/^[a-z]/.test(name)) return checkHtml(component);
  const rules = Object.hasOwn(entryComponents, name) ? entryComponents[name] : undefined;
  const names = Object.keys(entryComponents);
  if (rules === undefined) {
    return [
      problemAt(
        component,
        'component/unknown',
        `unknown component <${name}>`,
        suggest(name, names) ?? `one of: ${names.join(', ')}`,
      ),
    ];
  }

  const missing = Object.entries(rules)
    .filter(
      ([prop, rule]) => rule.required && !component.props.some((written) => written.name === prop),
    )
    .map(([prop]) =>
      problemAt(
        component,
        'component/missing-prop',
        `<${name}> lacks "${prop}"`,
        `add ${prop}="…"`,
      ),
    );
  const noVideo =
    name === 'AtTime' && entry.value.video === undefined
      ? [
          problemAt(
            component,
            'entry/no-video',
            '<AtTime> points into a video, and the entry names none',
            'add "video: https://…" to the front matter',
          ),
        ]
      : [];
  const noBudget =
    name === 'Budget' && input.project.lists.budgets.length === 0 && input.known.has('budgets')
      ? [
          problemAt(
            component,
            'component/no-budget',
            '<Budget> shows a budget, and the project has none',
            'write lines in ledger/budgets: id, date, amount, phase',
          ),
        ]
      : [];
  return [
    ...missing,
    ...noVideo,
    ...noBudget,
    ...component.props.flatMap((prop) => checkProp(prop, name, rules, input)),
  ];
}

function checkProp(
  prop: WrittenProp,
  component: string,
  rules: Readonly<Record<string, PropRule>>,
  input: RuleInput,
): Problem[] {
  const rule = Object.hasOwn(rules, prop.name) ? rules[prop.name] : undefined;
  if (rule === undefined) {
    const known = Object.keys(rules);
    return [
      problemAt(
        prop,
        'component/unknown-prop',
        `<${component}> has no property "${prop.name}"`,
        suggest(prop.name, known) ?? (known.length > 0 ? undefined : `write <${component} />`),
      ),
    ];
  }
  if (rule.flag) return prop.literal === true ? [] : [notAlone(prop, component)];
  const texts = Array.isArray(prop.literal) && !rule.many ? undefined : [prop.literal ?? []].flat();
  if (!texts?.length || !texts.every((text) => typeof text === 'string')) {
    return [
      problemAt(
        prop,
        'component/prop-value',
        `<${component}> ${prop.name}: ${prop.source} is not a plain text`,
        rule.many
          ? `write ${prop.name}="…" or ${prop.name}={["…", "…"]}`
          : `write ${prop.name}="…"`,
      ),
    ];
  }
  return texts.flatMap((text) => checkText(text, prop, component, rule, input));
}

function notAlone(prop: WrittenProp, component: string): Problem {
  const message = `<${component}> ${prop.name}: ${prop.source} stands where nothing is wanted`;
  return problemAt(prop, 'component/prop-value', message, `write ${prop.name} alone`);
}

function checkText(
  text: string,
  prop: WrittenProp,
  component: string,
  rule: PropRule,
  { project, known }: RuleInput,
): Problem[] {
  if (text.trim() === '')
    return [
      problemAt(
        prop,
        'component/empty',
        `<${component}> ${prop.name} is empty`,
        'say it in a few words',
      ),
    ];
  if (rule.ids !== undefined) return unknownId(text, rule.ids, prop, known);
  if (rule.words && !rule.words.includes(text))
    return [
      withMend(
        problemAt(
          prop,
          'component/word',
          `<${component}> ${prop.name}: unknown word "${text}"`,
          suggest(text, rule.words),
        ),
        text,
        oneSlipFrom(text, rule.words),
      ),
    ];
  if (rule.moment && parseMoment(text) === undefined)
    return [
      problemAt(
        prop,
        'component/moment',
        `<${component}> ${prop.name}: "${text}" is not a time in a video`,
        'write minutes and seconds, like 4:32',
      ),
    ];
  if (rule.points && !isTwoPlaces(text))
    return [
      problemAt(
        prop,
        'component/points',
        `<${component}> ${prop.name}: "${text}" is not two different places on a photo`,
        `write across and down of both as fractions, like ${prop.name}="0.25 0.60, 0.75 0.60"`,
      ),
    ];
  if (rule.photo && !project.photos.includes(text))
    return [
      problemAt(
        prop,
        'photo/missing',
        `the photo "${text}" is not in ${project.id}/photos/`,
        suggest(text, project.photos) ?? 'put the file there',
      ),
    ];
  return [];
}

function isTwoPlaces(text: string): boolean {
  const points = parseTwoPoints(text);
  return points !== undefined && areApart(points);
}

function checkLink(link: UsedLink, { known }: RuleInput): Problem[] {
  const match = /^([a-z]+):([^/].*)$/.exec(link.url);
  if (!match?.[1] || match[1] === 'mailto') return dangerousLink(link);
  const [, scheme, id = ''] = match;
  const kind = Object.hasOwn(linkSchemes, scheme) ? linkSchemes[scheme] : undefined;
  if (kind === undefined)
    return [
      problemAt(
        link,
        'link/scheme',
        `the link "${link.url}" has an unknown scheme`,
        suggest(scheme, Object.keys(linkSchemes)),
      ),
    ];
  return unknownId(id, kind, link, known);
}

function dangerousLink(link: UsedLink): Problem[] {
  if (/^(https:\/\/|mailto:|#)/.test(link.url)) return [];
  if (/^http:/.test(link.url))
    return [
      problemAt(
        link,
        'link/address',
        `the link "${link.url}" is not an https address`,
        `write "${link.url.replace(/^http:/, 'https:')}"`,
      ),
    ];
  return [
    problemAt(
      link,
      'link/address',
      `the link "${link.url}" leads nowhere from every page`,
      'write https://…, or spec:, part:, phase:, entry:, cost:, row: and an id',
    ),
  ];
}

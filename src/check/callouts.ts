import type { ReadEntry, ReadProject } from '../read/content.ts';
import type { UsedComponent } from '../read/mdx.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { hasValueOn } from './measured.ts';
import type { Rule } from './rule.ts';

/** A photo that is shown with callouts has some, and the value of each is known by the entry's day. */
export const shownCalloutsAreThere: Rule = ({ project }) => {
  if (project.lost.kinds.has('photos') || project.lost.kinds.has('findings')) return [];
  return project.entries.flatMap((entry) =>
    entry.body.components.flatMap((component) => {
      const file = component.props.find(({ name }) => name === 'file')?.literal;
      const wanted = component.props.some(({ name }) => name === 'callouts');
      const known = typeof file === 'string' && !project.lost.photoFiles.includes(file);
      return wanted && known ? checkCallouts(file, component, entry, project) : [];
    }),
  );
};

function checkCallouts(
  file: string,
  component: UsedComponent,
  entry: ReadEntry,
  project: ReadProject,
): Problem[] {
  const record = project.lists.photos.find(({ value }) => value.file === file)?.value;
  const callouts = record?.callouts ?? [];
  const found = project.lists.findings.some(({ value }) => value.photo === file && value.at);
  if (callouts.length === 0 && !found)
    return [
      problemAt(
        component,
        'photo/no-callouts',
        `<Photo> shows the callouts of "${file}", and it has none`,
        'add "callouts:" to its record in photos.yaml, or take "callouts" out',
      ),
    ];
  return callouts.flatMap(({ spec }) =>
    spec === undefined || hasValueOn(spec, entry.value.date, project)
      ? []
      : [
          problemAt(
            component,
            'component/no-reading',
            `<Photo> with a callout of "${spec}": there is no value on or before ${entry.value.date}`,
            'add the reading to ledger/readings, or take the callout out',
          ),
        ],
  );
}

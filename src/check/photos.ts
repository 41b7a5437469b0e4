import { privateTags } from '../model/photos.ts';
import type { UsedComponent } from '../read/mdx.ts';
import { suggest } from '../read/nearest.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';

/** A photo's record names a file that is there, and no two records name the same one. */
export const photoRecordsHaveFiles: Rule = ({ project }) => {
  const first = new Map<string, string>();
  return project.lists.photos.flatMap(({ raw, value: { id, file } }): Problem[] => {
    const place = raw.placeOf(['file']);
    const before = first.get(file);
    if (before !== undefined)
      return [
        problemAt(
          place,
          'photo/twice',
          `"${file}" has a record already: "${before}"`,
          'put both into one record',
        ),
      ];
    first.set(file, id);
    if (project.photos.includes(file)) return [];
    const message = `file: "${file}" is not in ${project.id}/photos/`;
    const fix = suggest(file, project.photos) ?? 'put the file there';
    return [problemAt(place, 'photo/missing', message, fix)];
  });
};

/** The words that each component gives for a photo, by the property that names it: the photo of a pair has its own. */
const WORDS: ReadonlyMap<string, readonly (readonly [file: string, words: Words])[]> = new Map([
  ['Photo', [['file', { alt: 'alt', caption: 'caption' }]]],
  [
    'PhotoPair',
    [
      ['before', { alt: 'before-alt' }],
      ['after', { alt: 'after-alt' }],
    ],
  ],
]);

type Words = { readonly alt: string; readonly caption?: string };

/** Every photo that an entry shows is described for those who can't see it, and has a caption: where it is shown or in its record. */
export const shownPhotosAreDescribed: Rule = ({ project }) => {
  if (project.lost.kinds.has('photos')) return [];
  const records = new Map(project.lists.photos.map(({ value }) => [value.file, value]));
  return project.entries.flatMap(({ body }) =>
    body.components.flatMap((component) =>
      (WORDS.get(component.name) ?? []).flatMap(([named, words]) => {
        const file = component.props.find(({ name }) => name === named)?.literal;
        const record = typeof file === 'string' ? records.get(file) : undefined;
        if (typeof file === 'string' && project.lost.photoFiles.includes(file)) return [];
        return (['alt', 'caption'] as const).flatMap((field) => {
          const prop = words[field];
          const given = component.props.some(({ name }) => name === prop) || record?.[field];
          return prop === undefined || given ? [] : [lacksWords(component, prop, field)];
        });
      }),
    ),
  );
};

function lacksWords(component: UsedComponent, prop: string, field: string): Problem {
  return problemAt(
    component,
    'component/missing-prop',
    `<${component.name}> lacks "${prop}"`,
    `add ${prop}="…" here, or "${field}: …" to its record in photos.yaml`,
  );
}

/** A photo that is said to show something private has it hidden, or says that nothing must be. */
export const taggedPhotosAreHidden: Rule = ({ project }) =>
  project.lists.photos.flatMap(({ raw, value }): Problem[] => {
    const { file, tags = [], hide = [], nothingToHide } = value;
    if (nothingToHide && hide.length > 0)
      return [
        problemAt(
          raw.placeOf(['nothing-to-hide']),
          'photo/hide',
          'the record lists areas to hide and says that there is nothing to hide',
          'keep one of the two',
        ),
      ];
    const shown = privateTags.filter(
      (tag) => tags.includes(tag) && !hide.some(({ what }) => what === tag),
    );
    if (shown.length === 0 || nothingToHide) return [];
    const message = `"${file}" is tagged ${shown.join(', ')}, and no such area is hidden on it`;
    const fix = `add "hide:" with "- what: ${shown[0]}" and "box: [left, top, width, height]", or "nothing-to-hide: true"`;
    return [{ ...problemAt(raw.placeOf(['tags']), 'photo/hide', message, fix), level: 'warning' }];
  });

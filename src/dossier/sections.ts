import type { Project, View } from '../book/types.ts';
import type { Words } from '../words/words.ts';
import { shownPhotos } from './photos.ts';

/** What the sections are called by, for their bodies and their titles. */
export type SectionKey = keyof Words['dossier']['sections'];

/** A part of the dossier with a heading and a line in the contents. */
export interface Section {
  readonly key: SectionKey;
  /** Id of the heading; the PDF has a destination of this name. */
  readonly id: string;
  readonly number: number;
}

type Asked = (view: View) => boolean;

const always: Asked = () => true;
const tellsMoney: Asked = ({ project }) => project.info.dossier.costs !== 'none';

const SECTIONS: readonly (readonly [key: SectionKey, isThere: Asked])[] = [
  ['machine', always],
  ['identity', ({ project }) => hasIdentity(project)],
  ['condition', hasCondition],
  ['decisions', ({ project }) => project.choices.length > 0],
  ['work', always],
  ['parts', always],
  ['specs', always],
  ['money', tellsMoney],
  ['donors', (view) => tellsMoney(view) && hasDonor(view.project)],
  ['corrections', ({ project }) => project.corrections.length > 0],
  ['marks', ({ project }) => project.marks !== undefined],
  ['instruments', ({ project }) => project.instruments.length > 0],
  ['open', always],
  ['hazards', always],
  ['photos', ({ project }) => shownPhotos(project).length > 0],
  ['references', always],
];

/** The sections that the dossier of a project has, numbered as they follow one another. */
export function sectionsOf(view: View): readonly Section[] {
  return SECTIONS.filter(([, isThere]) => isThere(view)).map(([key], index) => ({
    key,
    id: `dossier-${key}`,
    number: index + 1,
  }));
}

function hasIdentity({ info }: Project): boolean {
  return info.identity !== undefined && info.dossier.identity !== 'none';
}

function hasCondition({ project, specs }: View): boolean {
  return project.surveys.length > 0 || specs.some(({ asFound }) => asFound !== undefined);
}

function hasDonor({ sources }: Project): boolean {
  return sources.some(({ kind }) => kind === 'donor');
}

import type { Project, View } from '../book/types.ts';
import { shownPhotos } from './photos.ts';

/** A part of the dossier with a heading and a line in the contents. */
export interface Section {
  readonly key: string;
  /** Id of the heading; the PDF has a destination of this name. */
  readonly id: string;
  readonly number: number;
  readonly title: string;
}

type Asked = (view: View) => boolean;

const always: Asked = () => true;
const tellsMoney: Asked = ({ project }) => project.info.dossier.costs !== 'none';

const SECTIONS: readonly (readonly [key: string, title: string, isThere: Asked])[] = [
  ['machine', 'The machine', always],
  ['identity', 'Identity and papers', ({ project }) => hasIdentity(project)],
  ['condition', 'Condition as found', hasCondition],
  ['decisions', 'Decisions', ({ project }) => project.choices.length > 0],
  ['work', 'Work by phase', always],
  ['parts', 'Parts and where they came from', always],
  ['specs', 'Specs', always],
  ['money', 'Money', tellsMoney],
  ['donors', 'Donor accounts', (view) => tellsMoney(view) && hasDonor(view.project)],
  ['corrections', 'Corrections', ({ project }) => project.corrections.length > 0],
  ['marks', 'Marks', ({ project }) => project.marks !== undefined],
  ['instruments', 'Instruments', ({ project }) => project.instruments.length > 0],
  ['open', 'Open points', always],
  ['hazards', 'Hazards named in the log', always],
  ['photos', 'Photos', ({ project }) => shownPhotos(project).length > 0],
  ['references', 'How to look up a reference', always],
];

/** The sections that the dossier of a project has, numbered as they follow one another. */
export function sectionsOf(view: View): readonly Section[] {
  return SECTIONS.filter(([, , isThere]) => isThere(view)).map(([key, title], index) => ({
    key,
    id: `dossier-${key}`,
    number: index + 1,
    title,
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

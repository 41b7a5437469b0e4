import type { Entry, Project } from '../book/types.ts';
import { showMoment } from '../time/moment.ts';
import type { Addresses } from './address.ts';

/** A moment of a video with where it leads. */
export interface MomentLink {
  readonly seconds: number;
  readonly label: string;
  /** Absolute address of the spec or part, or of the entry itself. */
  readonly address: string;
}

/** The moments of an entry's video in order of time, each with the page that holds its numbers. */
export function momentLinks(project: Project, entry: Entry, to: Addresses): MomentLink[] {
  return [...(entry.moments ?? [])]
    .sort((a, b) => a.at - b.at)
    .map(({ at, label, spec, part }) => {
      const path = spec
        ? to.spec(project, spec)
        : part
          ? to.row(project, part)
          : to.entry(project, entry);
      return { seconds: at, label, address: to.absolute(path) };
    });
}

/**
 * Ready-to-paste lines for a video's description: time, label, address; the entry's own address first.
 * Where all of it would be longer than `most` characters, moments without a spec or part lose their address first, then
 * labels are cut, then the last moments are left out; the result says how many.
 */
export function descriptionLines(
  links: readonly MomentLink[],
  entryAddress: string,
  most: number,
): { readonly text: string; readonly left: number } {
  const plain = ({ seconds, label }: MomentLink) => `${showMoment(seconds)} ${label}`;
  const full = (link: MomentLink) =>
    link.address === entryAddress ? plain(link) : `${plain(link)} ${link.address}`;
  for (let count = links.length; count >= 0; count--) {
    const shown = links.slice(0, count);
    for (const cut of [200, 40, 24]) {
      const text = [
        entryAddress,
        ...shown.map((link) => full({ ...link, label: shorten(link.label, cut) })),
      ].join('\n');
      if (text.length <= most) return { text, left: links.length - count };
    }
  }
  return { text: entryAddress, left: links.length };
}

function shorten(label: string, most: number): string {
  if (label.length <= most) return label;
  // Not in the middle of a character that takes two places, such as a pictograph.
  const cut = label.slice(0, most - 1).replace(/[\ud800-\udbff]$/, '');
  return `${cut.trimEnd()}…`;
}

import type { Project } from '../book/types.ts';
import type { Addresses } from '../publish/address.ts';
import { showDay } from '../time/day.ts';
import { piecesOf } from '../words/pieces.ts';
import { wordsOf } from '../words/words.ts';

/**
 * The heads and feet of the printed pages, as margin boxes of CSS Paged Media 3 (section 5): what they say differs by project, so
 * they are a sheet of their own and no inline style. The first page has its title block in their place.
 */
export function runningHeads(project: Project, to: Addresses, language: string): string {
  const { info, lastDay } = project;
  const { machine, name } = info;
  const { dossier, general } = wordsOf(language);
  const what = `${machine.year} ${machine.maker} ${machine.model}`;
  return `@page {
  @top-left { content: ${cssString(dossier.heading(name))}; }
  @top-right { content: ${cssString(what)}; }
  @bottom-left { content: ${cssString(to.absolute(to.dossier(project)))}; }
  @bottom-center { content: ${cssString(general.asOf(showDay(lastDay, language)))}; }
  @bottom-right { content: ${counted(dossier.page)}; }
}
@page :first {
  @top-left { content: none; }
  @top-right { content: none; }
}
`;
}

/** A sentence with `{page}` and `{pages}` in it, which are counters of these names in CSS. */
function counted(sentence: string): string {
  return piecesOf(sentence)
    .map((piece) => ('slot' in piece ? `counter(${piece.slot})` : cssString(piece.text)))
    .join(' ');
}

/** A string of CSS; quotes, backslashes and line ends are escaped by CSS Syntax 3, section 4.3.5. */
export function cssString(text: string): string {
  return `"${text.replace(/["\\\n<]/g, (sign) => `\\${sign.codePointAt(0)?.toString(16)} `)}"`;
}

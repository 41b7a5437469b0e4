import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as runtime from 'astro/jsx-runtime';
import Slugger from 'github-slugger';
import { defineHastPlugin, type EvaluateOptions, evaluate } from 'satteri';
import { wouldRun } from '../check/would-run.ts';
import { cutFrontMatter } from '../read/front-matter.ts';
import type { Problem } from '../read/problem.ts';
import { decodeTyped } from '../read/text.ts';
import type { Words } from '../words/words.ts';
import { contentDir } from './folders.ts';

/** Tells Astro which of its renderers a component is for, so that none is tried. */
const RENDERER = Symbol.for('astro:renderer');

/** What a page shows an entry's text with. */
export type EntryContent = (props: { readonly components?: object }) => unknown;

/**
 * The text of an entry, as a component. An entry is data, not a module of the bundler: it is compiled when its page is made, in the very
 * characters that were checked. Throws where the file can't be read as an entry, which the check tells of.
 */
export async function entryContent(
  file: string,
  { general: { footnotes } }: Words,
): Promise<EntryContent> {
  const text = decodeTyped(await readFile(join(contentDir, file)), file);
  const cut = typeof text === 'string' ? cutFrontMatter(text) : undefined;
  if (typeof cut !== 'object') throw new Error(`${file} is no entry; run "npm run check"`);
  // A build has checked before; while somebody writes, anything may stand there, and none of it may run.
  const [refused] = import.meta.env.DEV ? wouldRun(cut.rest, file) : [];
  if (refused !== undefined) return notShown(refused);
  const { default: write } = (await evaluate(cut.rest, {
    ...(runtime as Pick<EvaluateOptions, 'Fragment' | 'jsx' | 'jsxs'>),
    elementAttributeNameCase: 'html',
    // Curly quotes are off: in a log full of inches 5/8" must stay as typed.
    features: { smartPunctuation: false, gfm: { footnotes } },
    hastPlugins: [headingIds],
  })) as { default: EntryContent };
  const Content: EntryContent = (props) =>
    write({ ...props, components: { Fragment: runtime.Fragment, ...props.components } });
  return Object.assign(Content, { [RENDERER]: 'astro:jsx' });
}

/** What stands in place of a text that would run something. */
function notShown({ file, line, column, message }: Problem): EntryContent {
  const text = `The text of this entry is not shown. ${file}:${line}:${column}: ${message}`;
  const Content = () => runtime.jsx('p', { children: text });
  return Object.assign(Content, { [RENDERER]: 'astro:jsx' });
}

/** Headings can be pointed at: each gets an id of its words, counted where two are the same. */
function headingIds() {
  const slugger = new Slugger();
  return defineHastPlugin({
    name: 'heading-ids',
    element: {
      filter: ['h1', 'h2', 'h3', 'h4', 'h5', 'h6'],
      visit: (node, context) => {
        const { id } = node.properties;
        if (typeof id !== 'string')
          context.setProperty(node, 'id', slugger.slug(context.textContent(node)));
      },
    },
  });
}

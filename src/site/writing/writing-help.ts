import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { checkContent } from '../../check/check.ts';
import { type ReadContent, readContent } from '../../read/content.ts';
import type { Problem } from '../../read/problem.ts';
import { contentDir } from '../folders.ts';
import { entryHelp } from './entry-help.ts';
import { html } from './html.ts';
import { problemList } from './problem-list.ts';
import { problemPage } from './problem-page.ts';

interface Read {
  readonly content: ReadContent;
  readonly problems: readonly Problem[];
}

/** Problems and a panel in the pages of the dev server; a build has nothing of it. */
export function writingHelp(): AstroIntegration {
  let base = '/';
  return {
    name: 'witnessmark-writing-help',
    hooks: {
      'astro:config:setup': ({ command, config, injectScript }) => {
        base = config.base.endsWith('/') ? config.base : `${config.base}/`;
        const panel = fileURLToPath(new URL('./panel.js', import.meta.url));
        if (command === 'dev') injectScript('page', `import ${JSON.stringify(panel)};`);
      },
      'astro:server:setup': ({ server }) => {
        server.middlewares.use(async (request, response, next) => {
          const url = new URL(request.originalUrl ?? request.url ?? '/', 'http://localhost');
          const answer = url.pathname.endsWith('/__writing')
            ? await panelFor(url.searchParams.get('page') ?? '')
            : await problemsInstead(url, base);
          if (answer === undefined) return next();
          response.setHeader('content-type', 'text/html; charset=utf-8');
          response.setHeader('cache-control', 'no-store');
          response.end(answer);
        });
      },
    },
  };
}

async function read(): Promise<Read> {
  const content = await readContent(contentDir);
  return { content, problems: checkContent(content, new Date()) };
}

async function problemsInstead({ pathname, searchParams }: URL, base: string) {
  if (!pathname.endsWith('/') || searchParams.has('anyway')) return undefined;
  const { problems } = await read();
  if (!problems.some(({ level }) => level === 'error')) return undefined;
  return problemPage(problems, { base, path: pathname });
}

async function panelFor(page: string): Promise<string> {
  const { content, problems } = await read();
  const [, id, slug] = /([^/]+)\/log\/([^/]+)\/$/.exec(page) ?? [];
  const project = content.projects.find((one) => one.id === id);
  const entry = project?.entries.find((one) => one.slug === slug);
  const help = project && entry ? await entryHelp(content, project, entry) : [];
  if (help.length === 0 && problems.length === 0) return '';
  const errors = problems.some(({ level }) => level === 'error');
  const count = `${errors ? 'problems' : 'warnings'} (${problems.length})`;
  const said = [problems.length > 0 ? count : '', help.length > 0 ? 'to tell' : ''];
  return html`<details><summary>Writing help: ${said.filter(Boolean).join(', ')}</summary><div>${help}
${problems.length > 0 && html`<h2>${errors ? 'Problems' : 'Warnings'}</h2>${problemList(problems)}`}</div></details>`
    .html;
}

import type { Problem } from '../../read/problem.ts';
import { html } from './html.ts';
import { problemList } from './problem-list.ts';

/** The page that stands in place of any other while the content has errors; it goes when they are mended. */
export function problemPage(
  problems: readonly Problem[],
  { base, path }: { readonly base: string; readonly path: string },
): string {
  const errors = problems.filter(({ level }) => level === 'error');
  const rest = problems.filter(({ level }) => level !== 'error');
  const title =
    errors.length === 1 ? '1 problem in the content' : `${errors.length} problems in the content`;
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<link rel="stylesheet" href="${base}src/styles/sheet.css">
<link rel="stylesheet" href="${base}src/site/writing/writing.css">
<script type="module" src="${base}@vite/client"></script>
<script type="module" src="${base}src/site/writing/open-editor.js"></script>
</head>
<body>
<div class="frame"><main id="content" class="writing-problems">
<h1>${title}</h1>
<p>Records with problems are left out until they are mended; this page then gives way by itself.
<a href="${path}?anyway">Show the page without them</a></p>
${problemList([...errors, ...rest])}
</main></div>
</body>
</html>
`.html;
}

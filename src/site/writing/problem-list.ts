import type { Problem } from '../../read/problem.ts';
import { type Html, html } from './html.ts';
import { placeLink } from './place-link.ts';

/** Problems as a list: where, what is wrong, what to type. */
export function problemList(problems: readonly Problem[]): Html {
  return html`<ol class="problems">${problems.map(
    ({ level, file, line, column, message, fix }) => html`<li class="${level}">
<p>${placeLink(file, line, column)}${level === 'warning' && html` <em>warning</em>`}</p>
<p><strong>${message}</strong></p>${fix !== undefined && html`<p class="fix">→ ${fix}</p>`}
</li>`,
  )}</ol>`;
}

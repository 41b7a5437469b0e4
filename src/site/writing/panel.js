// The panel of the dev server: what the open page's entry leaves untold, and warnings.
import './open-editor.js';
import './writing.css';

const base = document.querySelector('header.index .site a')?.getAttribute('href') ?? '/';
const answer = await fetch(`${base}__writing?page=${encodeURIComponent(location.pathname)}`);
const text = answer.ok ? await answer.text() : '';
if (text !== '') {
  const panel = document.createElement('aside');
  panel.className = 'writing-panel';
  panel.setAttribute('aria-label', 'Writing help');
  panel.innerHTML = text;
  document.body.append(panel);
}

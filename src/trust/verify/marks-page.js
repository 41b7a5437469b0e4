/**
 * The page of marks: lets a reader check the ledger in their own browser, by verify-browser.js and files of this folder alone.
 * Without scripts the page still has the files and the Python verifier. What it says comes with the page, in its language; what the
 * verifier finds is English everywhere.
 */
import { load, showRow, verify } from './verify-browser.js';

class LedgerCheck extends HTMLElement {
  connectedCallback() {
    const words = JSON.parse(this.dataset.words ?? '{}');
    const kept = Object.assign(document.createElement('input'), { type: 'file', id: 'kept' });
    const whole = answer();
    const check = form(words.everyRow, [label(words.older, kept)]);
    check.addEventListener('submit', async (event) => {
      event.preventDefault();
      wait(whole, words.checking);
      const [file] = kept.files ?? [];
      found(
        whole,
        await said(async () => {
          const older = file && new Uint8Array(await file.arrayBuffer());
          return (await verify({ ...(await load()), ...(older && { kept: older }) })).lines;
        }),
      );
    });

    const id = Object.assign(document.createElement('input'), { id: 'row', required: true });
    const one = answer();
    const show = form(words.showProof, [label(words.id, id)]);
    show.addEventListener('submit', async (event) => {
      event.preventDefault();
      wait(one, words.searching);
      found(one, await said(async () => showRow(await load(), id.value.trim())));
    });
    this.replaceChildren(check, whole, show, one);
  }
}

/** @param {() => Promise<string[]>} check */
async function said(check) {
  try {
    return (await check()).join('\n');
  } catch (error) {
    return `not ok: ${error instanceof Error ? error.message : error}`;
  }
}

/** @param {string} text @param {HTMLInputElement} input */
function label(text, input) {
  const element = Object.assign(document.createElement('label'), { textContent: text });
  element.htmlFor = input.id;
  const row = document.createElement('p');
  row.append(element, document.createElement('br'), input);
  return row;
}

/** @param {string} action @param {HTMLElement[]} fields */
function form(action, fields) {
  const element = document.createElement('form');
  const button = Object.assign(document.createElement('button'), { textContent: action });
  element.append(...fields, button);
  return element;
}

/** @param {HTMLElement} place @param {string} text */
function wait(place, text) {
  place.removeAttribute('lang');
  place.textContent = text;
}

/** @param {HTMLElement} place @param {string} text */
function found(place, text) {
  place.lang = 'en';
  place.textContent = text;
}

/** Where an answer will stand; screen readers say it when it comes. */
function answer() {
  const element = document.createElement('pre');
  element.setAttribute('role', 'status');
  element.className = 'answer';
  return element;
}

customElements.define('ledger-check', LedgerCheck);

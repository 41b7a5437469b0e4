// Elements by one call. Text is always set as text, so nothing that was typed becomes markup.

/** Makes an element; properties that start with `on` are listeners, the rest are attributes. */
export function el(tag, given = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(given)) {
    if (value === undefined || value === false) continue;
    if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else if (name === 'value') element.value = value;
    else element.setAttribute(name, value === true ? '' : value);
  }
  element.append(
    ...children
      .flat(Number.POSITIVE_INFINITY)
      .filter((child) => child !== undefined && child !== false),
  );
  return element;
}

let counter = 0;

/** An id for an element that a label or a description names. */
export const newId = () => `f${++counter}`;

/** A message that is read out and goes after a while. */
export function say(text, wrong = false) {
  const line = el('p', { class: wrong ? 'said wrong' : 'said' }, text);
  document.getElementById('notices').replaceChildren(line);
  setTimeout(() => line.remove(), wrong ? 15000 : 2500);
}

// Lets the later photo of a pair be laid over the earlier one, by keys and by pointer. Without it both stand beside one another.
// What it says stands on the figure, so that the script is the same in every language.
const SCRIPT = `for (const figure of document.querySelectorAll('figure[data-reveal]')) {
  const button = Object.assign(document.createElement('button'), { type: 'button' });
  const range = Object.assign(document.createElement('input'), { type: 'range', min: 0, max: 100, value: 50 });
  const [label, beside, above, shares] = JSON.parse(figure.dataset.reveal);
  range.setAttribute('aria-label', label);
  const show = () => {
    const over = figure.classList.contains('over');
    button.textContent = over ? beside : above;
    range.hidden = !over;
    range.setAttribute('aria-valuetext', shares.replace('{before}', range.value).replace('{after}', 100 - range.value));
    figure.style.setProperty('--edge', range.value + '%');
  };
  button.addEventListener('click', () => {
    figure.classList.toggle('over');
    show();
    if (!range.hidden) range.focus();
  });
  range.addEventListener('input', show);
  show();
  figure.querySelector('.reveal').append(range, button);
}
`;

export function GET(): Response {
  return new Response(SCRIPT, { headers: { 'Content-Type': 'text/javascript; charset=utf-8' } });
}

// Adds a button that copies, where the browser lets it. Without it the text can be selected as ever.
// What the button says stands on the element, so that the script is the same in every language.
const SCRIPT = `customElements.define('copy-text', class extends HTMLElement {
  connectedCallback() {
    if (!navigator.clipboard) return;
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: this.dataset.copy });
    button.addEventListener('click', async () => {
      await navigator.clipboard.writeText(this.firstElementChild.textContent.trim());
      button.textContent = this.dataset.copied;
      setTimeout(() => { button.textContent = this.dataset.copy; }, 2000);
    });
    this.append(' ', button);
  }
});
`;

export function GET(): Response {
  return new Response(SCRIPT, { headers: { 'Content-Type': 'text/javascript; charset=utf-8' } });
}

// Marks the entries of a list that are new to this reader. What was seen is kept on this device alone, once the reader asks for it.
// Its texts stand on the element, so that the script is the same in every language.
const SCRIPT = `const fill = (text, values) => text.replace(/\\{(\\w+)\\}/g, (_, name) => values[name]);

customElements.define('since-visit', class extends HTMLElement {
  connectedCallback() {
    try { localStorage.getItem('x'); } catch { return; }
    this.texts = JSON.parse(this.dataset.texts);
    this.key = 'seen:' + location.pathname;
    this.items = [...document.querySelectorAll('ol.entries > li')].map((item) => ({ item, link: item.querySelector('a') }));
    this.hidden = false;
    this.show();
  }
  show() {
    const kept = JSON.parse(localStorage.getItem(this.key) ?? 'null');
    for (const mark of document.querySelectorAll('.new-here')) mark.remove();
    if (kept === null) {
      this.replaceChildren(this.button(this.texts.remember, () => this.keep()), ' ' + this.texts.explain);
      return;
    }
    const fresh = this.items.filter(({ link }) => !kept.seen.includes(link.getAttribute('href')));
    for (const { link } of fresh)
      link.after(' ', Object.assign(document.createElement('span'), { className: 'new-here', textContent: this.texts.mark }));
    const day = new Intl.DateTimeFormat(this.dataset.language, { dateStyle: 'long' }).format(new Date(kept.day));
    const said = Object.assign(document.createElement('span'), {
      textContent: fill(fresh.length > 0 ? this.texts.newOnes : this.texts.none, { count: fresh.length, day }),
    });
    this.replaceChildren(said, ' ', ...(fresh.length > 0 ? [this.button(this.texts.seen, () => this.keep()), ' '] : []), this.button(this.texts.forget, () => this.forget()));
  }
  keep() {
    const seen = this.items.map(({ link }) => link.getAttribute('href'));
    localStorage.setItem(this.key, JSON.stringify({ day: new Date().toISOString(), seen }));
    this.show();
  }
  forget() {
    localStorage.removeItem(this.key);
    this.show();
  }
  button(text, act) {
    const button = Object.assign(document.createElement('button'), { type: 'button', textContent: text });
    button.addEventListener('click', act);
    return button;
  }
});
`;

export function GET(): Response {
  return new Response(SCRIPT, { headers: { 'Content-Type': 'text/javascript; charset=utf-8' } });
}

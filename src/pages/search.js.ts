// Searches the site on the reader's own device; what was asked for stands in the address and is sent nowhere.
// Its texts stand on the element, so that the script is the same in every language.
const SCRIPT = `const MOST = 20;
const fill = (text, values) => text.replace(/\\{(\\w+)\\}/g, (_, name) => values[name]);

/** The words around what was found: text and marks, and nothing else of what the index holds. */
function excerptOf(html) {
  const quote = document.createElement('p');
  for (const node of new DOMParser().parseFromString(html, 'text/html').body.childNodes) {
    if (node.nodeName !== 'MARK') { quote.append(node.textContent); continue; }
    quote.append(Object.assign(document.createElement('mark'), { textContent: node.textContent }));
  }
  return quote;
}

/** Whether a page has a word that begins like one asked for: where nothing fits, the library cuts words down to their first letter. */
function isMeant({ excerpt }, query) {
  const marked = [...excerpt.matchAll(/<mark>([^<]*)</g)].map(([, text]) => text.toLowerCase());
  const asked = query.toLowerCase().split(/\\s+/).map((word) => word.slice(0, 3));
  return marked.some((text) => asked.some((start) => text.includes(start)));
}

customElements.define('site-search', class extends HTMLElement {
  connectedCallback() {
    const form = this.querySelector('form');
    this.texts = JSON.parse(this.dataset.texts);
    this.kinds = JSON.parse(this.dataset.kinds);
    form.elements.q.value = new URLSearchParams(location.search).get('q') ?? '';
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      history.replaceState(null, '', '?q=' + encodeURIComponent(form.elements.q.value));
      this.find(form.elements.q.value);
    });
    this.find(form.elements.q.value);
  }
  async find(asked) {
    const query = asked.trim();
    const list = this.querySelector('ol');
    list.replaceChildren();
    if (query === '') return this.say('');
    this.say(this.texts.looking);
    try {
      this.library ??= this.load();
      const library = await this.library;
      const { results } = await library.search(query);
      const first = await Promise.all(results.slice(0, MOST).map((result) => result.data()));
      const pages = first.filter((page) => isMeant(page, query));
      list.replaceChildren(...pages.map((page) => this.line(page)));
      const count = results.length > MOST ? results.length : pages.length;
      const text = ['none', 'one'][count] ?? (count > MOST ? 'first' : 'some');
      this.say(fill(this.texts[text], { query, count, shown: MOST }));
    } catch {
      this.library = undefined;
      this.say(this.texts.broken);
    }
  }
  /** The library with the index of every project: each is made with its project's pages. */
  async load() {
    const library = await import(this.dataset.library);
    for (const index of JSON.parse(this.dataset.indexes)) await library.mergeIndex(index);
    return library;
  }
  line({ url, meta, excerpt }) {
    const item = document.createElement('li');
    const link = Object.assign(document.createElement('a'), { href: url, textContent: meta.title });
    const facts = document.createElement('p');
    facts.className = 'when';
    facts.textContent = [this.kinds[meta.kind], meta.project, meta.date].filter(Boolean).join(' · ');
    item.append(facts, link, excerptOf(excerpt));
    return item;
  }
  say(text) {
    this.querySelector('[role=status]').textContent = text;
  }
});
`;

export function GET(): Response {
  return new Response(SCRIPT, { headers: { 'Content-Type': 'text/javascript; charset=utf-8' } });
}

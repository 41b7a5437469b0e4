/** What may be pointed at: a row of a table, an item of a list, a group that opens, a part of a page. */
const POINTED = 'tr[id], li[id], details[id], div[id], section[id]';

/**
 * A strip at the foot of the window about the element that the address points at: its address and a citation to copy, and a QR code, drawn
 * when it is asked for. What it says stands in its attributes, in the language of the page.
 */
class PointedAt extends HTMLElement {
  connectedCallback(): void {
    addEventListener('hashchange', () => this.#show());
    this.#show();
  }

  #show(): void {
    const id = decodeURIComponent(location.hash.slice(1));
    this.replaceChildren();
    this.hidden = !(id && document.getElementById(id)?.matches(POINTED));
    if (this.hidden) return;
    const page = document.querySelector<HTMLLinkElement>('link[rel=canonical]')?.href;
    const address = `${page ?? location.href.replace(/#.*/, '')}#${encodeURIComponent(id)}`;
    const { by = '', says = '' } = this.dataset;
    const [label = '', link, citation, qr, close, copied = ''] = says.split('|');
    const name = Object.assign(document.createElement('b'), { textContent: id });
    const strip = document.createElement('section');
    strip.setAttribute('aria-label', label);
    strip.append(
      name,
      this.#button(link, (button) => copy(button, address, copied)),
      this.#button(citation, (button) =>
        copy(button, `${by}: ${id}. ${document.title.replaceAll(' · ', ', ')}. ${address}`, copied),
      ),
      this.#button(qr, async (button) => {
        const { qrText } = await import('../draw/qr-text.ts');
        button.replaceWith(document.createRange().createContextualFragment(qrText(address, qr)));
      }),
      this.#button(close, () => {
        this.hidden = true;
      }),
    );
    this.append(strip);
  }

  #button(text: string | undefined, act: (button: HTMLButtonElement) => unknown): HTMLElement {
    const button = document.createElement('button');
    button.type = 'button';
    button.textContent = text ?? '';
    button.addEventListener('click', () => void act(button));
    return button;
  }
}

/** Copies; where a browser lets nobody at its clipboard, the text stands there to be selected. */
async function copy(button: HTMLElement, text: string, copied: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    button.textContent = copied;
  } catch {
    button.replaceWith(Object.assign(document.createElement('span'), { textContent: text }));
  }
}

customElements.define('pointed-at', PointedAt);

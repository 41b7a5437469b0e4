/** A piece of HTML that is safe to put into another. */
export interface Html {
  readonly html: string;
}

type Part = string | number | Html | readonly Html[] | undefined | false;

/** HTML with its values escaped; pieces of HTML and lists of them go in as they are. */
export function html(strings: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return { html: strings.reduce((out, text, index) => out + shown(parts[index - 1]) + text) };
}

function shown(part: Part): string {
  if (part === undefined || part === false) return '';
  if (typeof part === 'string' || typeof part === 'number') return escaped(String(part));
  return 'html' in part ? part.html : part.map((one) => one.html).join('');
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ENTITIES[character] ?? character);
}

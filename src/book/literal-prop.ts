import type { UsedComponent } from '../read/mdx.ts';

/** What an entry says in a property of a component; nothing where it is not a plain text. */
export function literalProp({ props }: UsedComponent, name: string): string {
  return String(props.find((prop) => prop.name === name)?.literal ?? '');
}

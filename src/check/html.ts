import { entryComponents } from '../model/components.ts';
import { htmlAttributes, htmlElements } from '../model/html-elements.ts';
import type { UsedComponent, WrittenProp } from '../read/mdx.ts';
import { suggest } from '../read/nearest.ts';
import { type Problem, problemAt } from '../read/problem.ts';

/** What is wrong with a plain HTML element in an entry. One that could load or run something is refused, as is any that is not listed. */
export function checkHtml({ name, props, ...place }: UsedComponent): Problem[] {
  // It has been said that a picture stands in an entry as a photo.
  if (name === 'img') return [];
  if (htmlElements.includes(name)) return props.flatMap((prop) => checkAttribute(prop, name));
  const component = Object.keys(entryComponents).find((one) => one.toLowerCase() === name);
  const fix = name === 'a' ? 'write [text](https://…)' : suggest(name, htmlElements);
  return [
    problemAt(
      place,
      'component/html',
      `<${name}> may not stand in an entry`,
      component ? `write <${component}>` : fix,
    ),
  ];
}

function checkAttribute(prop: WrittenProp, element: string): Problem[] {
  // An expression would be run when the site is built, whatever the element it stands on.
  if (prop.literal === undefined)
    return [
      problemAt(
        prop,
        'component/prop-value',
        `<${element}> ${prop.name}: ${prop.source} is not a plain text`,
        `write ${prop.name}="…"`,
      ),
    ];
  if (htmlAttributes.includes(prop.name)) return [];
  return [
    problemAt(
      prop,
      'component/html-attribute',
      `<${element}> may not have "${prop.name}" in an entry`,
      suggest(prop.name, htmlAttributes),
    ),
  ];
}

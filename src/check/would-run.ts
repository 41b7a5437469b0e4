import { readMdx } from '../read/mdx.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { checkHtml } from './html.ts';

/** What of an entry's text would be run if it were compiled, whatever else is in the content. */
export function wouldRun(text: string, file: string): Problem[] {
  const { body, problems } = readMdx(text, file);
  return [
    ...problems,
    ...body.components.flatMap((component) => {
      if (/^[a-z]/.test(component.name)) return checkHtml(component);
      const run = component.props.filter(({ literal }) => literal === undefined);
      return run.map((prop) =>
        problemAt(prop, 'component/prop-value', `${prop.name}: ${prop.source} is not run here`),
      );
    }),
    ...body.links
      .filter(({ url }) => /^\s*(javascript|data|vbscript):/i.test(url))
      .map((link) => problemAt(link, 'link/address', `the link "${link.url}" is not run here`)),
  ];
}

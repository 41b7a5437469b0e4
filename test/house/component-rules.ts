import ts from 'typescript';

/** Signs that work out a figure. Sums of counts and the step to a neighbour (`+`, `-`) are no figures. */
const SIGNS = new Set([
  ts.SyntaxKind.AsteriskToken,
  ts.SyntaxKind.AsteriskAsteriskToken,
  ts.SyntaxKind.SlashToken,
  ts.SyntaxKind.PercentToken,
  ts.SyntaxKind.PlusEqualsToken,
  ts.SyntaxKind.MinusEqualsToken,
]);

/** What a component works out by itself, though figures are made in `src`. */
export function arithmeticOf(file: string, text: string): string[] {
  const [, head = '', markup = text] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text) ?? [];
  const shown = markup.replace(/<(style|script)[\s\S]*?<\/\1>/g, '');
  return [head, `<>${shown}</>`].flatMap(worked).map((found) => `${file}: ${found}`);
}

function worked(source: string): string[] {
  const tree = ts.createSourceFile(
    'a.tsx',
    source,
    ts.ScriptTarget.Latest,
    true,
    ts.ScriptKind.TSX,
  );
  const found: string[] = [];
  const visit = (node: ts.Node) => {
    if (ts.isBinaryExpression(node) && SIGNS.has(node.operatorToken.kind))
      found.push(node.getText());
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

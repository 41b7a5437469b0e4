import { library } from '../calc/library.ts';

/** Prints every calculation of the library: what it gives, what it needs, where it was published. */
export async function main(args: readonly string[]): Promise<number> {
  const [wanted] = args;
  const shown = [...library.values()].filter(
    ({ name }) => wanted === undefined || name.includes(wanted),
  );
  for (const { name, title, inputs, many, result, source } of shown) {
    console.log(`${name}  →  ${result.quantity} (${result.unit})\n  ${title}`);
    if (many)
      console.log(
        `  ${many.key.padEnd(8)} ${many.what}: a list of ${many.quantity}, at least ${many.atLeast}`,
      );
    for (const [symbol, input] of Object.entries(inputs)) {
      console.log(
        `  ${symbol.padEnd(8)} ${input.what}: ${input.quantity} (${input.unit})${input.otherwise ? `, otherwise ${input.otherwise}` : ''}`,
      );
    }
    console.log(`  source:  ${source}\n`);
  }
  if (shown.length === 0) console.error(`There is no calculation with "${wanted}" in its name.`);
  return shown.length === 0 ? 1 : 0;
}

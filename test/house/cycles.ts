import { type Code, importsOf } from './code.ts';

/** Rings of files that import one another, types included, each as `a → b → a`; one ring for each knot of files. */
export function cyclesOf(code: Code): string[] {
  const done = new Set<string>();
  const rings: string[] = [];
  const visit = (file: string, trail: readonly string[]) => {
    const at = trail.indexOf(file);
    if (at >= 0) rings.push([...trail.slice(at), file].join(' → '));
    if (at >= 0 || done.has(file)) return;
    for (const { to } of importsOf(file, code.get(file) ?? ''))
      if (code.has(to)) visit(to, [...trail, file]);
    done.add(file);
  };
  for (const file of code.keys()) visit(file, []);
  return rings;
}

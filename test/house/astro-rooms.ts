import { type Code, importsOf } from './code.ts';

/** Folders that know Astro. */
const ROOMS = ['src/site/', 'src/pages/', 'src/layouts/', 'components/'];

/** Single files that do: types, the commands that start Astro, and what they are measured against. */
export const STARTERS = [
  'src/build/bundle-worker.ts',
  'src/build/render-pages.ts',
  'src/cli/dev.ts',
  'src/cli/start.ts',
  'src/bench/bare-astro.ts',
  'src/bench/bare-contender.ts',
  'src/bench/photo-astro.ts',
  'src/bench/photo-contender.ts',
];

/** Imports of Astro, its integrations or an Astro file from anywhere else. */
export function astroOutside(code: Code): string[] {
  return [...code]
    .filter(([file]) => !STARTERS.includes(file) && !ROOMS.some((room) => file.startsWith(room)))
    .flatMap(([file, text]) =>
      importsOf(file, text)
        .filter(({ to }) => isAstro(to))
        .map(({ to }) => `${file} imports ${to}`),
    );
}

export const isAstro = (name: string) =>
  /^(@astrojs\/|astro($|[:/]))/.test(name) || name.endsWith('.astro');

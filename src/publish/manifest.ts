/** What was published: the SHA-256 in hex of each file, by its path in the site's folder. */
export type Manifest = ReadonlyMap<string, string>;

/** How a site differs from the one published before it; paths of files. */
export interface Difference {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly vanished: readonly string[];
}

/**
 * Files that nobody keeps the address of: styles, scripts and pictures are named by what is in them, cards are fetched anew with
 * their page, and the search's index belongs to one build.
 */
const UNKEPT = /^(assets|photos|cards)\/|(^|\/)find\/|^404\.html$/;

/** Whether the address of a file is kept once it has been published. */
export function isKept(path: string): boolean {
  return !UNKEPT.test(path);
}

/** Writes a manifest as `sha256sum` does, so that "sha256sum -c" reads it too. */
export function writeManifest(manifest: Manifest): string {
  return [...manifest]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([path, hash]) => `${hash}  ${path}\n`)
    .join('');
}

/** Reads a manifest; the number of the first line that is none where there is one. */
export function parseManifest(text: string): Manifest | { readonly line: number } {
  const lines = text.split(/\r?\n/);
  if (lines.at(-1) === '') lines.pop();
  const manifest = new Map<string, string>();
  for (const [index, line] of lines.entries()) {
    const [, hash, path] = /^([0-9a-f]{64}) [ *](\S.*)$/.exec(line) ?? [];
    if (hash === undefined || path === undefined) return { line: index + 1 };
    manifest.set(path, hash);
  }
  return manifest;
}

/** The address inside the site that a file answers to: `lapwing/` for `lapwing/index.html`. */
export function addressOfFile(path: string): string {
  return path.replace(/(^|\/)index\.html$/, '$1');
}

/** What is new, what is not the same byte for byte, and what is gone. */
export function compareManifests(before: Manifest, now: Manifest): Difference {
  const paths = [...now.keys()];
  return {
    added: paths.filter((path) => !before.has(path)),
    changed: paths.filter((path) => before.has(path) && before.get(path) !== now.get(path)),
    vanished: [...before.keys()].filter((path) => !now.has(path)),
  };
}

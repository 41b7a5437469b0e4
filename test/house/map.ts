import { type Code, importsOf } from './code.ts';

/** What each folder of the map in DEVELOPERS.md may import, in the words of its last column. */
export type FolderMap = ReadonlyMap<string, readonly string[]>;

/** Reads the table. A row may name several folders, in backticks. */
export function readMap(markdown: string): FolderMap {
  const map = new Map<string, readonly string[]>();
  for (const line of markdown.split('\n')) {
    const [, folders = '', , may = ''] = line.split('|');
    for (const [, folder = ''] of folders.matchAll(/`([\w/.]+)`/g)) {
      if (map.has(folder)) throw new Error(`${folder} stands in the map twice`);
      map.set(
        folder,
        may.split(/[,;]/).map((word) => word.trim().replaceAll('`', '')),
      );
    }
  }
  return map;
}

/** Names for several folders at once, as the text under the table says. */
const GROUPS: Readonly<Record<string, readonly string[]>> = {
  values: ['time', 'money', 'units'],
  figures: ['hours', 'cost', 'parts', 'plan', 'measure'],
};

/** Imports from one folder to another that the map does not allow, and folders it does not know. */
export function offTheMap(code: Code, map: FolderMap): string[] {
  const unknown = new Set([...code.keys()].map(folderOf).filter((folder) => !map.has(folder)));
  const imports = [...code].flatMap(([file, text]) =>
    importsOf(file, text)
      .filter(({ to }) => code.has(to) && folderOf(to) !== folderOf(file))
      .filter(({ to, typeOnly }) => !isAllowed(map, file, to, typeOnly))
      .map(({ to, typeOnly }) => `${file} imports ${typeOnly ? 'types of ' : ''}${to}`),
  );
  return [...[...unknown].map((folder) => `${folder} is not on the map`), ...imports];
}

/** `src/money` for a file in it, `components` for one there, and the file itself where it stands in `src`. */
export function folderOf(file: string): string {
  const [root = '', folder = ''] = file.split('/');
  return root === 'src' ? `src/${folder}` : root;
}

function isAllowed(map: FolderMap, file: string, to: string, typeOnly: boolean): boolean {
  const rows = [...map.keys()];
  const above = rows.slice(0, rows.indexOf(folderOf(file)));
  const target = folderOf(to);
  const allows = (word: string): boolean => {
    if (word.startsWith('types of ')) return typeOnly && allows(word.slice('types of '.length));
    if (word === 'all') return true;
    if (word === 'all but cli') return target !== 'src/cli';
    if (word === 'all above') return above.includes(target);
    if (word.endsWith('.ts')) return to === `src/${word}`;
    return (GROUPS[word] ?? [word]).some((name) => target === `src/${name}` || target === name);
  };
  return (map.get(folderOf(file)) ?? []).some(allows);
}

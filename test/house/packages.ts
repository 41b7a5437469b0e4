import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { READ_BY_HAND } from './licences.ts';

/** A package of the lock file. */
export interface Package {
  readonly name: string;
  /** Whether it is needed to make a site, and not only to work on the code. */
  readonly production: boolean;
  readonly licence: string;
  /** Bytes of its own files; undefined where it is not installed, since it is for another machine. */
  readonly bytes: number | undefined;
}

/** The project's own dependencies and every package that they bring along. */
export interface Packages {
  readonly direct: { readonly production: number; readonly development: number };
  readonly all: readonly Package[];
}

/** The part of a lock file that is read here. */
interface Lock {
  readonly packages: Readonly<Record<string, Locked>>;
}

interface Locked {
  readonly dev?: boolean;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

/** Reads the lock file of a folder, and the packages by it: what lies in `node_modules` besides does not count. */
export function readPackages(folder: string): Packages {
  const { packages }: Lock = JSON.parse(readFileSync(join(folder, 'package-lock.json'), 'utf8'));
  const { '': own = {}, ...rest } = packages;
  const count = (names: Readonly<Record<string, string>> = {}) => Object.keys(names).length;
  return {
    direct: { production: count(own.dependencies), development: count(own.devDependencies) },
    all: Object.entries(rest).map(([path, locked]) => {
      const name = path.replace(/^.*node_modules\//, '');
      const home = join(folder, path);
      return {
        name,
        production: locked.dev !== true,
        licence: licenceOf(home) ?? locked.license ?? READ_BY_HAND[name] ?? 'none',
        bytes: existsSync(home) ? bytesOf(home) : undefined,
      };
    }),
  };
}

/** What an installed package says of itself; older ones hold an object, or a list of them. */
function licenceOf(home: string): string | undefined {
  const file = join(home, 'package.json');
  if (!existsSync(file)) return undefined;
  const { license, licenses } = JSON.parse(readFileSync(file, 'utf8'));
  const told = [license ?? licenses ?? []].flat().map((one) => one.type ?? one);
  return told.length > 0 ? told.join(' OR ') : undefined;
}

/** Packages inside a package are counted by themselves. */
function bytesOf(folder: string): number {
  return readdirSync(folder, { withFileTypes: true })
    .filter(({ name }) => name !== 'node_modules')
    .map((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return bytesOf(path);
      return entry.isFile() ? statSync(path).size : 0;
    })
    .reduce((sum, bytes) => sum + bytes, 0);
}

import { createPrivateKey, generateKeyPairSync, type KeyObject } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile, realpath } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { contentDir } from '../site/folders.ts';
import { printKey } from '../trust/note-key.ts';
import { liesIn } from '../write/lies-in.ts';
import { writeNew } from '../write/place-file.ts';
import { tellFailure } from './tell-failure.ts';

/** A private key, or why it is refused. */
export type KeyRead = { readonly privateKey: KeyObject } | { readonly refused: string };

/** Reads an Ed25519 key in PEM. A key that lies where it could be committed or published is refused. */
export async function readKey(path: string): Promise<KeyRead> {
  const near = await tooNear(path);
  if (near) return { refused: near };
  try {
    const privateKey = createPrivateKey(await readFile(path));
    return privateKey.asymmetricKeyType === 'ed25519'
      ? { privateKey }
      : {
          refused: `${path} is a key of another kind (${privateKey.asymmetricKeyType}); marks are signed with Ed25519.`,
        };
  } catch (error) {
    return {
      refused:
        tellFailure(error) ??
        `${path} can't be read as a private key in PEM: ${(error as Error).message}`,
    };
  }
}

/** Makes a key that only its owner may read; never writes over a file. Says why not, or nothing. */
export async function makeKey(path: string): Promise<string | undefined> {
  const near = await tooNear(path);
  if (near) return near;
  const { privateKey } = generateKeyPairSync('ed25519');
  const pem = privateKey.export({ type: 'pkcs8', format: 'pem' });
  return (await writeNew(path, pem, { mode: 0o600 }))
    ? undefined
    : `${path} is there already; it was left as it is.`;
}

/** Whether a key belongs to the public key that a project names. */
export function isKeyOf(line: string | undefined, origin: string, publicKey: KeyObject): boolean {
  return line === printKey({ name: origin, publicKey });
}

async function tooNear(path: string): Promise<string | undefined> {
  const folder = await realpath(dirname(resolve(path))).catch(() => undefined);
  if (folder === undefined)
    return `There is no folder ${dirname(resolve(path))} yet. Make it, then run this again.`;
  const key = await realpath(path).catch(() => join(folder, basename(path)));
  for (const home of [contentDir, repositoryOf(contentDir), process.cwd()]) {
    if (liesIn(await realpath(home), key))
      return `${path} lies inside ${home}, where it could be committed or published. Keep the key outside.`;
  }
  return undefined;
}

/** The folder around another that is a repository; without one, the folder itself. */
function repositoryOf(folder: string): string {
  for (let around = folder; around !== dirname(around); around = dirname(around))
    if (existsSync(join(around, '.git'))) return around;
  return folder;
}

import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import type { TestProject } from 'vitest/node';
import { openBrowser } from './browser.ts';
import { realPhotos } from './real-photos.ts';

/** Why a check can't run on this machine; undefined where it can. */
export interface Missing {
  readonly java: string | undefined;
  readonly browser: string | undefined;
  readonly poppler: string | undefined;
  readonly atomSchema: string | undefined;
  readonly dataPackageProfile: string | undefined;
  readonly exiftool: string | undefined;
  readonly realPhotos: string | undefined;
  readonly vocabulary: string | undefined;
}

/** The vocabulary of schema.org, release 30.0, as it is published. */
export const VOCABULARY = 'schemaorg-30.0-all-https.jsonld';

declare module 'vitest' {
  export interface ProvidedContext {
    missing: Missing;
  }
}

/** Looks for what npm can't bring along, and says once which checks are skipped without it. */
export default async function lookForMissing(project: TestProject): Promise<void> {
  const schema = join(process.env.WITNESSMARK_SCHEMAS ?? '', 'atom.rng');
  const profile = join(process.env.WITNESSMARK_SCHEMAS ?? '', 'datapackage-2.0/datapackage.json');
  const vocabulary = join(process.env.WITNESSMARK_SCHEMAS ?? '', VOCABULARY);
  const missing: Missing = {
    java: (await runs('java', '-version'))
      ? undefined
      : 'the Nu Html Checker needs java, which is not installed',
    browser: (await hasBrowser())
      ? undefined
      : 'accessibility and layout need a browser: install Chrome',
    poppler: (await runs('pdftotext', '-v'))
      ? undefined
      : 'the printed dossier is read by pdftotext and pdfinfo, which are not installed (poppler-utils)',
    atomSchema: existsSync(schema)
      ? undefined
      : 'the RELAX NG check of the feed needs atom.rng, in the folder that WITNESSMARK_SCHEMAS names',
    dataPackageProfile: existsSync(profile)
      ? undefined
      : 'the profile check of datapackage.json needs datapackage-2.0/, in the folder that WITNESSMARK_SCHEMAS names',
    exiftool: (await runs('exiftool', '-ver'))
      ? undefined
      : 'the second reader of metadata is exiftool, which is not installed',
    realPhotos:
      realPhotos().length > 0
        ? undefined
        : 'real photographs are in the npm packages exif and jpeg-exif, which are not installed',
    vocabulary: existsSync(vocabulary)
      ? undefined
      : `the comparison of our terms with all of schema.org needs ${VOCABULARY}, in the folder that WITNESSMARK_SCHEMAS names`,
  };
  for (const reason of Object.values(missing)) if (reason) console.log(`Skipped here: ${reason}.`);
  project.provide('missing', missing);
}

const runs = (program: string, ...args: string[]) =>
  promisify(execFile)(program, args).then(
    () => true,
    () => false,
  );

async function hasBrowser(): Promise<boolean> {
  // A first run that was broken off leaves half a browser, which would pass for a whole one ever after.
  const browser = await openBrowser().catch(async () => {
    await rm(join(tmpdir(), 'chromium'), { force: true });
    return openBrowser();
  });
  await browser?.close();
  return browser !== undefined;
}

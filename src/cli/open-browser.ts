import sparticuz from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';

/**
 * A browser: the one that npm brings along on Linux, an installed Chrome elsewhere. Undefined where there is neither;
 * on Linux that is an error. More arguments go to the browser as they are. The first call unpacks it, which two processes must not do at a time.
 */
export async function openBrowser(more: readonly string[] = []): Promise<Browser | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64')
    return chromium.launch({ channel: 'chrome', args: [...more] }).catch(() => undefined);
  // The package's own arguments are for small cloud functions: one process for everything, and no web security.
  const options = {
    executablePath: await sparticuz.executablePath(),
    args: ['--no-sandbox', '--disable-gpu', ...more],
  };
  // A start in some hundreds ends in a crash of its own, before any page is opened.
  return chromium.launch(options).catch(() => chromium.launch(options));
}

import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import sparticuz from '@sparticuz/chromium';
import { type Browser, chromium } from 'playwright-core';

/**
 * A browser: the one that npm brings along on Linux, an installed Chrome elsewhere. Undefined where there is neither;
 * on Linux that is an error. The first call unpacks it, which two processes must not do at a time.
 */
export async function openBrowser(): Promise<Browser | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64')
    return chromium.launch({ channel: 'chrome' }).catch(() => undefined);
  // The package's own arguments are for small cloud functions: one process for everything, and no web security.
  const options = {
    executablePath: await sparticuz.executablePath(),
    args: ['--no-sandbox', '--disable-gpu'],
  };
  // A start in some hundreds ends in a crash of its own, before any page is opened.
  return chromium.launch(options).catch(() => chromium.launch(options));
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.webp': 'image/webp',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.atom': 'application/atom+xml',
  '.xml': 'application/xml',
  '.txt': 'text/plain',
};

/** Serves a folder on this machine as a static host does. Close it when done. */
export async function serve(folder: string): Promise<{ address: string; close(): void }> {
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://x').pathname);
    const file = join(folder, path.endsWith('/') ? `${path}index.html` : path);
    const found = await readFile(file).catch(() => undefined);
    response.writeHead(found ? 200 : 404, { 'Content-Type': TYPES[extname(file)] ?? 'text/plain' });
    response.end(found ?? 'not found');
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  // A server that listens on a port has an address of this kind.
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close() };
}

import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

export { openBrowser } from '../../src/cli/open-browser.ts';

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
    const type = TYPES[extname(file)] ?? 'text/plain';
    const packed = found && /^text|svg|xml/.test(type);
    response.writeHead(found ? 200 : 404, {
      'Content-Type': type,
      ...(packed ? { 'Content-Encoding': 'gzip' } : {}),
    });
    response.end(packed ? gzipSync(found) : (found ?? 'not found'));
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  // A server that listens on a port has an address of this kind.
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close() };
}

import type { AstroIntegration } from 'astro';
import { contentDir } from './folders.ts';

/** Reloads open pages of the dev server when any file of the content folder changes, ledger files and photos included. */
export function reloadOnContent(onChange: () => Promise<void>): AstroIntegration {
  return {
    name: 'witnessmark-reload',
    hooks: {
      'astro:server:setup': ({ server, logger }) => {
        server.watcher.add(contentDir);
        // One after the other: two at a time would write the same list of photos.
        let last: Promise<void> = Promise.resolve();
        server.watcher.on('all', async (event, path) => {
          if (!path.startsWith(contentDir) || event.endsWith('Dir')) return;
          last = last.then(onChange).catch((error) => logger.error(String(error)));
          await last;
          // Which pages there are may have changed too; Astro keeps the list until it hears of it.
          for (const { hot } of Object.values(server.environments))
            hot.send('astro:content-changed', {});
          server.ws.send({ type: 'full-reload', path: '*' });
        });
      },
    },
  };
}

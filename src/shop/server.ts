import { createServer, type RequestListener, type Server } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import { refuse, send } from './answer.ts';
import { router, type Shop } from './routes.ts';

/** Certificate and key, both PEM. */
export interface Certificate {
  readonly cert: string;
  readonly key: string;
}

/** A server of the bench page that does not listen yet. What goes wrong in one request ends that request alone. */
export function shopServer(shop: Shop, certificate?: Certificate): Server {
  const answer = router(shop);
  const listen: RequestListener = (request, response) => {
    response.on('error', () => {});
    answer(request)
      .catch((error: Error) => {
        console.error(`${request.method} failed: ${error.message}`);
        return refuse(500, 'broken', true);
      })
      .then((sent) => {
        send(response, sent);
        // The rest of a refused body is not waited for.
        if (sent.close) response.once('finish', () => request.socket.destroySoon());
      });
  };
  const limits = {
    headersTimeout: 10_000,
    requestTimeout: 130_000,
    keepAliveTimeout: 15_000,
    connectionsCheckingInterval: 2_000,
    maxHeaderSize: 16 * 1024,
  };
  const server = certificate
    ? createSecureServer({ ...limits, ...certificate }, listen)
    : createServer(limits, listen);
  server.maxConnections = 100;
  server.on('clientError', (_, socket) => socket.destroy());
  return server;
}

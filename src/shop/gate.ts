import type { IncomingMessage } from 'node:http';
import { type Answer, refuse } from './answer.ts';

/** What a request must say of itself before anything else is looked at. */
export interface Gate {
  /** Names, with port, by which this machine may be called. */
  readonly hosts: ReadonlySet<string>;
  readonly secure: boolean;
}

/** Why a request is turned away by its head alone; undefined when it may go on. */
export function turnedAway(request: IncomingMessage, { hosts, secure }: Gate): Answer | undefined {
  const { host = '', origin } = request.headers;
  const site = request.headers['sec-fetch-site'];
  if (!hosts.has(host.toLowerCase())) return refuse(421, 'host', true);
  const reads = request.method === 'GET' || request.method === 'HEAD';
  // A page of somebody else's may open the page here, but neither read nor write by a request of its own.
  if (site === 'cross-site' && request.headers['sec-fetch-mode'] !== 'navigate')
    return refuse(403, 'origin', true);
  const own = `${secure ? 'https' : 'http'}://${host.toLowerCase()}`;
  const wrongOrigin = origin === undefined ? !reads : origin.toLowerCase() !== own;
  return wrongOrigin ? refuse(403, 'origin', true) : undefined;
}

/** The token of a request's header. Never a cookie: those go to every port of a machine, and by themselves. */
export function tokenOf(request: IncomingMessage): string | undefined {
  return /^Bearer ([\w-]{43})$/.exec(request.headers.authorization ?? '')?.[1];
}

/** The path of a request, as it stands: nothing is decoded, so nothing can climb. */
export function pathOf(request: IncomingMessage): string {
  return (request.url ?? '/').split(/[?#]/)[0] ?? '/';
}

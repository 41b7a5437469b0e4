import { hostname, networkInterfaces } from 'node:os';

/** What the server listens on and is called by. */
export interface Where {
  readonly lan: boolean;
  readonly port: number;
  readonly secure: boolean;
  /** A name of this machine that the phones know, as its builder gave it. */
  readonly name: string | undefined;
}

/** Names by which a request may call this machine; any other is an address that somebody else pointed here (DNS rebinding). */
export function hostsOf({ lan, port, name }: Where): ReadonlySet<string> {
  const own = ['127.0.0.1', 'localhost', '[::1]'];
  const near = lan ? [...lanAddresses(), hostname(), `${bare(hostname())}.local`] : [];
  const named = name === undefined ? [] : [name];
  return new Set(
    [...own, ...near, ...named].flatMap((host) => {
      const lower = host.toLowerCase();
      return port === 443 || port === 80 ? [lower, `${lower}:${port}`] : [`${lower}:${port}`];
    }),
  );
}

/** The address to open: the given name, else the first address in the workshop's network, else this machine. */
export function addressToOpen(where: Where): string {
  const host = where.name ?? (where.lan ? lanAddresses()[0] : undefined) ?? '127.0.0.1';
  return `${where.secure ? 'https' : 'http'}://${host}:${where.port}/`;
}

/** Addresses of this machine in its networks (IPv4, as people type them). */
export function lanAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}

const bare = (host: string) => host.split('.')[0] ?? host;

import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readContent } from '../read/content.ts';
import { addressToOpen, hostsOf, type Where } from './addresses.ts';
import { Journal } from './journal.ts';
import { ledgerIn } from './ledger-in.ts';
import { Receiver } from './receive.ts';
import { type Certificate, shopServer } from './server.ts';
import { dropOldStaged } from './staged.ts';

/** What the bench page is opened with. */
export interface ShopOptions {
  readonly contentDir: string;
  readonly state: string;
  readonly port: number;
  readonly lan: boolean;
  readonly name?: string | undefined;
  readonly certificate?: Certificate | undefined;
  readonly now: () => Date;
  /** Told when a pairing code was used up, by a phone or by wrong tries. */
  readonly onCode: (paired: string | undefined) => void;
}

/** The bench page, listening. */
export interface OpenShop {
  readonly server: Server;
  readonly address: string;
  /** How many rows the last run had begun and not ended. */
  readonly recovered: number;
  close(): Promise<void>;
}

/** Ends what a crash broke off, then listens: on this machine only, or in the workshop's network. */
export async function openShop(options: ShopOptions): Promise<OpenShop> {
  const { contentDir, state, lan, name, certificate, now } = options;
  const journal = await Journal.open(state);
  const receiver = new Receiver(state, journal, ledgerIn(contentDir, now));
  const recovered = await receiver.recover();
  await dropOldStaged(state, now());

  const hosts = new Set<string>();
  const secure = certificate !== undefined;
  const content = () => readContent(contentDir);
  const server = shopServer(
    { state, gate: { hosts, secure }, receiver, content, now, onCode: options.onCode },
    certificate,
  );
  await new Promise<void>((ready, fail) => {
    server.once('error', fail).listen(options.port, lan ? undefined : '127.0.0.1', ready);
  });
  // A server that listens on a port has an address of this kind.
  const { port } = server.address() as AddressInfo;
  const where: Where = { lan, port, secure, name };
  for (const host of hostsOf(where)) hosts.add(host);
  return {
    server,
    address: addressToOpen(where),
    recovered,
    close: async () => {
      server.closeAllConnections();
      await new Promise((closed) => server.close(closed));
      await receiver.settle();
      await journal.close();
    },
  };
}

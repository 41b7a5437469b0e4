import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { type OpenShop, openShop } from '../shop/open-shop.ts';
import { makeCode } from '../shop/pairing.ts';
import { phonesOf, revokePhone } from '../shop/phones.ts';
import { describeCode } from '../shop/print-code.ts';
import { readJson, saveWhole, stateFolder } from '../shop/state-folder.ts';
import { contentDir, contentDirProblem, workDir } from '../site/folders.ts';
import { plural } from './print-problems.ts';
import { say } from './say.ts';
import { tellFailure } from './tell-failure.ts';
import { wrongUse } from './wrong-use.ts';

const HELP = `npm run bench-page [-- --lan] [--name workshop.local] [--port 8017] [--cert file --key file]
npm run bench-page -- --pair | --phones | --revoke NAME

Serves a page for a phone at the bench: a work timer, hours, costs, readings, findings and parts. What is entered is checked as files are
and written into the ledger; until then it stays on the phone.
--lan     listens in the workshop's network; without it, on this machine alone
--name    what the phones call this machine, where its address may change
--port    8017 without it; a phone keeps its entries by address and port, so keep both
--cert, --key  certificate and key (PEM) for https, which phones want for a page that opens without the workshop
--pair    makes another pairing code while the page is served
--phones  lists paired phones
--revoke  takes a phone out, at once
Exit status: 0 done, 1 refused, 2 wrong use.
`;

const PORT = 8017;

/** Serves the bench page, or sees to its phones. */
export async function main(args: readonly string[]): Promise<number> {
  const wanted = readArguments(args);
  if (typeof wanted === 'string') return say(wanted, 2);
  if (wanted.help) return say(HELP, 0);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  const state = stateFolder(workDir, contentDir);
  if (wanted.phones) return listPhones(state);
  if (wanted.revoke !== undefined) return revoke(state, wanted.revoke);
  if (wanted.pair) return pairAgain(state);
  return serve(state, wanted);
}

async function serve(state: string, wanted: Wanted): Promise<number> {
  const { cert, key, lan, name, port } = wanted;
  let shop: OpenShop;
  try {
    const certificate =
      cert && key
        ? { cert: await readFile(cert, 'utf8'), key: await readFile(key, 'utf8') }
        : undefined;
    shop = await openShop({
      contentDir,
      state,
      port,
      lan,
      name,
      certificate,
      now: () => new Date(),
      onCode: (paired) => afterCode(state, paired),
    });
  } catch (error) {
    return say(`The bench page can't be served: ${whyNot(error as Error, port)}`, 1);
  }
  await saveWhole(`${state}/address.json`, JSON.stringify(shop.address));
  if (shop.recovered > 0)
    console.log(
      `The last run broke off; ended what it had begun: ${plural(shop.recovered, 'row')}.`,
    );
  console.log(describeCode(shop.address, await makeCode(state, new Date())));
  console.log(`Open  ${shop.address}`);
  if (!lan)
    console.log(
      'Only this machine reaches it. For a phone in your network: npm run bench-page -- --lan',
    );
  if (lan && !cert)
    console.log(
      'Without https (--cert, --key) what is sent can be read in this network, and a phone can open the page only there.',
    );
  console.log('Stop with Ctrl+C.');
  await new Promise<void>((stop) => {
    process.once('SIGINT', stop).once('SIGTERM', stop);
  });
  await shop.close();
  return 0;
}

function whyNot(error: NodeJS.ErrnoException, port: number): string {
  if (error.code === 'EADDRINUSE')
    return `port ${port} is in use, perhaps by one that is served already. Close that, or name another with --port.`;
  return tellFailure(error) ?? error.message;
}

function afterCode(state: string, paired: string | undefined): void {
  if (paired !== undefined) console.log(`Paired: ${paired}. Another: npm run bench-page -- --pair`);
  else
    pairAgain(state).then(
      () => console.log('The code before was tried wrongly too often.'),
      (error: Error) => console.error(error.message),
    );
}

async function pairAgain(state: string): Promise<number> {
  const address = await readJson<string>(`${state}/address.json`);
  if (address === undefined) return say('The bench page was never served yet.', 1);
  return say(describeCode(address, await makeCode(state, new Date())), 0);
}

async function listPhones(state: string): Promise<number> {
  const phones = await phonesOf(state);
  const lines = phones.map(({ name, paired }) => `${name}  paired ${paired.slice(0, 10)}`);
  return say(lines.length > 0 ? lines.join('\n') : 'No phone is paired.', 0);
}

async function revoke(state: string, name: string): Promise<number> {
  const done = await revokePhone(state, name);
  return done ? say(`Revoked: ${name}.`, 0) : say(`There is no phone "${name}".`, 1);
}

type Wanted = Exclude<ReturnType<typeof readArguments>, string>;

function readArguments(args: readonly string[]) {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        lan: { type: 'boolean', default: false },
        name: { type: 'string' },
        port: { type: 'string', default: String(PORT) },
        cert: { type: 'string' },
        key: { type: 'string' },
        pair: { type: 'boolean', default: false },
        phones: { type: 'boolean', default: false },
        revoke: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
    const port = Number(values.port);
    if (!/^\d{1,5}$/.test(values.port) || port > 65_535) return `--port: "${values.port}" is none`;
    if ((values.cert === undefined) !== (values.key === undefined))
      return '--cert and --key go together';
    if (values.name !== undefined && !/^[a-z0-9]([a-z0-9.-]*[a-z0-9])?$/i.test(values.name))
      return `--name: "${values.name}" is no name of a machine, like workshop.local`;
    return { ...values, port };
  } catch (error) {
    return `${wrongUse(error)}\n\n${HELP}`;
  }
}

// Starts a command of src/cli on the Node that the project brings along. Plain JavaScript, so that any Node can read it.
const [major = 0] = process.versions.node.split('.').map(Number);
if (major < 24) {
  console.error(
    `Witnessmark runs on Node 24, and this is Node ${process.versions.node} (${process.execPath}).`,
  );
  console.error(
    'Run "npm ci" in the project folder, with install scripts allowed, and start commands through "npm run".',
  );
  process.exit(1);
}

process.env.ASTRO_TELEMETRY_DISABLED = '1';
const [command = '', ...args] = process.argv.slice(2);
const { main } = await import(`./${command}.ts`);
process.exitCode = (await main(args)) ?? 0;

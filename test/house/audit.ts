import { spawnSync } from 'node:child_process';

/** What the registry knows of the packages that make a site. */
export interface Audit {
  /** One line for whoever reads the run. */
  readonly told: string;
  /** Packages with a known weakness that is high or critical. */
  readonly unsafe: readonly string[];
}

/** Asks the registry, which needs the network: without an answer nothing is claimed, and why is said. */
export function auditOf(): Audit {
  const { stdout, error } = spawnSync('npm', ['audit', '--omit=dev', '--json'], {
    encoding: 'utf8',
    timeout: 60_000,
    shell: process.platform === 'win32',
  });
  if (error) return { told: `audit skipped: ${error.message}`, unsafe: [] };
  return readAudit(stdout);
}

/** Reads the answer of `npm audit --json`. */
export function readAudit(json: string): Audit {
  const answer = parsed(json);
  if (answer?.vulnerabilities === undefined) {
    const why = String(answer?.message ?? answer?.error?.summary ?? 'no answer');
    // Addresses say nothing to a reader that the reason doesn't.
    return { told: `audit skipped: ${why.replace(/\S+:\/\/\S+/g, 'the registry')}`, unsafe: [] };
  }
  const found = Object.values(answer.vulnerabilities);
  const grave = found.filter(({ severity }) => severity === 'high' || severity === 'critical');
  return {
    told: `audit: ${found.length} packages with a known weakness, ${grave.length} of them high or critical`,
    unsafe: grave.map(({ name, severity }) => `${name}: a known weakness, ${severity}`),
  };
}

interface Answer {
  readonly message?: string;
  readonly error?: { readonly summary?: string };
  readonly vulnerabilities?: Readonly<
    Record<string, { readonly name: string; readonly severity: string }>
  >;
}

function parsed(json: string): Answer | undefined {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

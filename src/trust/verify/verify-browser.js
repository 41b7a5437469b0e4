/**
 * Checks a published ledger in the reader's own browser, with none of the site's other code. The hash tree is that of RFC 9162 §2.1.
 * `ok` says that no row changed since the marks: tamper-evident. It does not say that a row is true, and it does not look at signatures.
 */

/**
 * The files as they are served, byte for byte; `kept` is an older marks.txt that the reader kept.
 * @typedef {{ rows: Uint8Array, marks: Uint8Array, proofs: Uint8Array, kept?: Uint8Array }} Files
 * @typedef {{ origin: string, size: number, root: string, date: string }} Mark
 */

const MARK =
  /^([!-*,-~]+)\n([1-9][0-9]{0,15})\n(\S{44})\ndate ([0-9]{4}-[0-9]{2}-[0-9]{2})(\n[^\n]+)*$/;

/**
 * Recomputes every leaf, every root and every proof. Hashes are compared in base64, in which they have one spelling only.
 * @param {Files} files
 * @param {Pick<SubtleCrypto, 'digest'>} [subtle]
 * @returns {Promise<{ ok: boolean, lines: string[] }>} one line a mark, then what failed or `ok`
 */
export async function verify(files, subtle = globalThis.crypto.subtle) {
  /** @type {string[]} */
  const lines = [];
  try {
    await verifyAll(files, treeHashes(subtle), lines);
    return { ok: true, lines };
  } catch (error) {
    lines.push(`not ok: ${error instanceof Error ? error.message : error}`);
    return { ok: false, lines };
  }
}

/**
 * Fetches rows.jsonl, marks.txt and proofs.json from the folder that an address is in, by default this script's own.
 * @param {string} [address]
 * @returns {Promise<Files>}
 */
export async function load(address = import.meta.url) {
  /** @param {string} name */
  const bytesOf = async (name) => {
    const response = await fetch(new URL(name, address));
    if (!response.ok) throw new Error(`${name} can't be loaded (${response.status})`);
    return new Uint8Array(await response.arrayBuffer());
  };
  const names = ['rows.jsonl', 'marks.txt', 'proofs.json'];
  const [rows, marks, proofs] = await Promise.all(names.map(bytesOf));
  return /** @type {Files} */ ({ rows, marks, proofs });
}

/**
 * The way from a row to the root of the newest mark, hash by hash (RFC 9162 §2.1.3.2), for each line that has its id.
 * @param {Files} files
 * @param {string} id
 * @param {Pick<SubtleCrypto, 'digest'>} [subtle]
 * @returns {Promise<string[]>}
 */
export async function showRow(files, id, subtle = globalThis.crypto.subtle) {
  const hashes = treeHashes(subtle);
  const { size, root, date } = /** @type {Mark} */ (readMarks(decode(files.marks)).at(-1));
  const { inclusion } = JSON.parse(decode(files.proofs));
  const lines = [];
  for (const [index, bytes] of (splitLines(files.rows) ?? []).entries()) {
    const row = decode(bytes);
    if (JSON.parse(row).id !== id) continue;
    let hash = await hashes.leaf(bytes);
    lines.push(row, `leaf  ${hash}`);
    let [fn, sn] = [index, size - 1];
    for (const step of readProof(inclusion[index])) {
      const isLeft = fn % 2 === 1 || fn === sn;
      hash = await (isLeft ? hashes.node(step, hash) : hashes.node(hash, step));
      lines.push(`${isLeft ? 'left ' : 'right'} ${step}`);
      while (isLeft && fn % 2 === 0 && fn !== 0) [fn, sn] = [fn / 2, Math.floor(sn / 2)];
      [fn, sn] = [Math.floor(fn / 2), Math.floor(sn / 2)];
    }
    const fits = sn === 0 && hash === root;
    lines.push(`root  ${hash}`, `${fits ? 'ok: the' : 'not ok: not the'} root of ${date}`, '');
  }
  return lines.length > 0 ? lines : [`no row "${id}" is under the newest mark`];
}

/**
 * @param {Files} files
 * @param {TreeHashes} hashes
 * @param {string[]} lines
 */
async function verifyAll(files, hashes, lines) {
  need(
    startsWith(files.marks, files.kept),
    'marks.txt is not the one you kept with more added to it',
  );
  const marks = readMarks(decode(files.marks));
  const proofs = JSON.parse(decode(files.proofs));
  const newest = /** @type {Mark} */ (marks.at(-1));
  const { size } = newest;
  const rows = splitLines(files.rows);
  need(rows?.length === size, `rows.jsonl does not have the ${size} rows of the newest mark`);

  const failures = [];
  const others = [];
  const leaves = await Promise.all((rows ?? []).map(hashes.leaf));
  for (const { date, size, root } of marks) {
    const same = (await rootOf(leaves.slice(0, size), hashes)) === root;
    lines.push(`${date} ${size} rows: ${same ? 'ok' : 'other rows'}`);
    if (!same) others.push(`the rows are not those of the mark of ${date}`);
  }

  const { inclusion, consistency } = proofs;
  const fits = inclusion?.length === size && consistency?.length === marks.length - 1;
  need(fits, 'proofs.json does not fit marks.txt');
  for (const [index, leaf] of leaves.entries()) {
    const root = await proven(() => included(index, size, leaf, readProof(inclusion[index])));
    if (root !== newest.root) failures.push(`line ${index + 1} of rows.jsonl is not proven`);
  }
  for (const [index, to] of marks.slice(1).entries()) {
    const from = /** @type {Mark} */ (marks[index]);
    const proof = consistency[index];
    const ends = await proven(() =>
      extended(from.size, to.size, from.root, readProof(proof), true),
    );
    if (ends?.[0] !== from.root || ends[1] !== to.root)
      failures.push(`the mark of ${to.date} is not proven to extend that of ${from.date}`);
  }
  failures.push(...others);
  need(failures.length === 0, `${failures.length} failed: ${failures.slice(0, 5).join('; ')}`);
  lines.push(`ok: ${size} rows, ${marks.length} marks`);

  /**
   * RFC 9162 §2.1.3.1, from the proof to the root.
   * @param {number} m @param {number} n @param {string} leaf @param {string[]} path @returns {Promise<string>}
   */
  async function included(m, n, leaf, path) {
    need(path.length > 0 === n > 1, 'the proof has another length');
    if (n === 1) return leaf;
    const k = split(n);
    const [rest, last] = [path.slice(0, -1), path.at(-1) ?? ''];
    return m < k
      ? hashes.node(await included(m, k, leaf, rest), last)
      : hashes.node(last, await included(m - k, n - k, leaf, rest));
  }

  /**
   * RFC 9162 §2.1.4.1, from the proof to the roots of both trees.
   * @param {number} m @param {number} n @param {string} root @param {string[]} path @param {boolean} whole
   * @returns {Promise<[string, string]>}
   */
  async function extended(m, n, root, path, whole) {
    const [rest, last] = [path.slice(0, -1), path.at(-1) ?? ''];
    if (m === n) {
      need(path.length === (whole ? 0 : 1), 'the proof has another length');
      return whole ? [root, root] : [last, last];
    }
    need(path.length > 0, 'the proof has another length');
    const k = split(n);
    if (m <= k) {
      const [old, left] = await extended(m, k, root, rest, whole);
      return [old, await hashes.node(left, last)];
    }
    const [old, right] = await extended(m - k, n - k, root, rest, false);
    return [await hashes.node(last, old), await hashes.node(last, right)];
  }
}

/**
 * RFC 9162 §2.1.1, on hashes in base64. Trees and proofs share most of their nodes, so each is worked out once.
 * @typedef {ReturnType<typeof treeHashes>} TreeHashes
 * @param {Pick<SubtleCrypto, 'digest'>} subtle
 */
function treeHashes(subtle) {
  /** @type {Map<string, Promise<string>>} */
  const nodes = new Map();
  /** @param {number[]} data */
  const hash = async (data) =>
    toBase64(new Uint8Array(await subtle.digest('SHA-256', Uint8Array.from(data))));
  return {
    /** @param {Uint8Array} row */
    leaf: (row) => hash([0x00, ...row]),
    /** @param {string} left @param {string} right */
    node: (left, right) => {
      const found =
        nodes.get(left + right) ?? hash([0x01, ...fromBase64(left), ...fromBase64(right)]);
      nodes.set(left + right, found);
      return found;
    },
  };
}

/**
 * Pairs up hashes level by level; one that is left over goes up as it is, which is where the RFC's split puts it too.
 * @param {string[]} leaves
 * @param {TreeHashes} hashes
 */
async function rootOf(leaves, { node }) {
  let level = leaves;
  while (level.length > 1) {
    const below = level;
    const pairs = Array.from({ length: Math.ceil(below.length / 2) }, (_, i) => {
      const [left = '', right] = below.slice(2 * i, 2 * i + 2);
      return right === undefined ? left : node(left, right);
    });
    level = await Promise.all(pairs);
  }
  return level[0];
}

/** The largest power of two below n. @param {number} n */
function split(n) {
  let k = 1;
  while (k * 2 < n) k *= 2;
  return k;
}

/** Paragraphs one blank line apart: a mark, or the signatures of the mark before. @param {string} text */
function readMarks(text) {
  need(text.endsWith('\n'), 'marks.txt is cut off');
  /** @type {Mark[]} */
  const marks = [];
  for (const part of text.slice(0, -1).split('\n\n')) {
    if (marks.length > 0 && part.startsWith('— ')) continue;
    const [, origin = '', size, root, date = ''] = MARK.exec(part) ?? [];
    need(size, 'marks.txt has a paragraph that is neither a mark nor signatures');
    marks.push({ origin, size: Number(size), root: readHash(root), date });
  }
  for (const [index, to] of marks.slice(1).entries()) {
    const from = /** @type {Mark} */ (marks[index]);
    const follows = from.origin === to.origin && from.size < to.size;
    need(follows, `the mark of ${to.date} does not follow that of ${from.date}`);
  }
  return marks;
}

/** @param {unknown} text */
function readHash(text) {
  need(typeof text === 'string' && /^[A-Za-z0-9+/]{43}=$/.test(text), `${text} is no hash`);
  const hash = String(text);
  need(toBase64(fromBase64(hash)) === hash, `${text} is no hash`);
  return hash;
}

/** @param {unknown} proof */
function readProof(proof) {
  need(Array.isArray(proof), 'a proof is a list');
  return /** @type {unknown[]} */ (proof).map(readHash);
}

/** What a check finds, or undefined when it can't be done. @template T @param {() => Promise<T>} check */
async function proven(check) {
  try {
    return await check();
  } catch {
    return undefined;
  }
}

/** The lines of a file, or undefined when the last one is cut off. @param {Uint8Array} bytes */
function splitLines(bytes) {
  const lines = [];
  let start = 0;
  for (let end = bytes.indexOf(10); end >= 0; end = bytes.indexOf(10, start)) {
    lines.push(bytes.subarray(start, end));
    start = end + 1;
  }
  return start === bytes.length ? lines : undefined;
}

/** Byte for byte: a byte order mark stays, and what is not UTF-8 is an error. @param {Uint8Array} bytes */
function decode(bytes) {
  return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
}

/** @param {Uint8Array} bytes @param {Uint8Array} [start] */
function startsWith(bytes, start = new Uint8Array()) {
  return start.length <= bytes.length && start.every((byte, index) => byte === bytes[index]);
}

/** @param {Uint8Array} bytes */
function toBase64(bytes) {
  return btoa(String.fromCharCode(...bytes));
}

/** @param {string} text */
function fromBase64(text) {
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}

/** @param {unknown} fact @param {string} message */
function need(fact, message) {
  if (!fact) throw new Error(message);
}

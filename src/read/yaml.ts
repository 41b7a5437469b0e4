import { isAlias, isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import { type Place, type Problem, problemAt } from './problem.ts';
import { type Path, PlaceMap, type RawRecord, type RawValue } from './raw.ts';

/** Records of one file, and what could not be read. */
export interface ReadRecords {
  readonly records: readonly RawRecord[];
  readonly problems: readonly Problem[];
}

/** Offset of a text inside a larger file, for front matter. */
export interface Shift {
  readonly lines: number;
}

/** Reads a YAML 1.2 file that is a list of records. An empty file is an empty list. */
export function readYamlList(text: string, file: string): ReadRecords {
  const { value, places, problems } = readYaml(text, file, { lines: 0 });
  if (problems.length > 0 || value === undefined) return { records: [], problems };
  if (!Array.isArray(value)) {
    const place = places.record(value, []).placeOf([]);
    return {
      records: [],
      problems: [
        problemAt(
          place,
          'yaml/not-a-list',
          'the file is not a list of records',
          'start each record with "- id: …"',
        ),
      ],
    };
  }
  return {
    records: value.map((item: RawValue, index) => places.record(item, [index])),
    problems: [],
  };
}

/** Reads a YAML text that is one record: project.yaml, site.yaml, or the front matter of an entry. */
export function readYamlRecord(
  text: string,
  file: string,
  shift: Shift = { lines: 0 },
): ReadRecords {
  const { value, places, problems } = readYaml(text, file, shift);
  if (problems.length > 0) return { records: [], problems };
  return { records: [places.record(value ?? {}, [])], problems: [] };
}

interface Tree {
  readonly value: RawValue | undefined;
  readonly places: PlaceMap;
  readonly problems: readonly Problem[];
}

/** Deeper than any record needs; it keeps a hostile file from exhausting the stack. */
const MAX_DEPTH = 12;

function readYaml(text: string, file: string, shift: Shift): Tree {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    prettyErrors: false,
    // Its own search for keys that stand twice takes the square of their number.
    uniqueKeys: false,
  });
  const places = new PlaceMap(file);
  const problems: Problem[] = [];
  const placeAt = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(1, line) + shift.lines, column: Math.max(1, col) };
  };
  places.setValue([], 1 + shift.lines, 1);

  // A parser that has lost its way complains on; only its first complaint is about what was typed.
  const [broken] = [...document.errors, ...document.warnings];
  if (broken) {
    const place = placeAt(broken.pos[0]);
    const row = text.split('\n')[place.line - 1 - shift.lines] ?? '';
    const said = `broken YAML: ${describe(broken)}`;
    problems.push(problemAt(place, 'yaml/broken', said, hintFor(broken, row)));
  }

  function walk(node: Node | null, path: Path): RawValue | undefined {
    if (node === null) return undefined;
    const start = placeAt(node.range?.[0] ?? 0);
    places.setValue(path, start.line, start.column);
    if (isAlias(node)) {
      problems.push(
        problemAt(
          start,
          'yaml/alias',
          `the alias "*${node.source}" is not read here`,
          'write the value out',
        ),
      );
      return undefined;
    }
    if (path.length > MAX_DEPTH) {
      problems.push(
        problemAt(start, 'yaml/too-deep', `nested deeper than ${MAX_DEPTH} levels`, undefined),
      );
      return undefined;
    }
    if (isScalar(node)) return scalarText(node.value, node.source);
    if (isSeq(node))
      return node.items.map((item, index) => walk(item as Node, [...path, index]) ?? '');
    if (!isMap(node)) return undefined;

    const record: Record<string, RawValue> = {};
    const seen = new Set<string>();
    for (const pair of node.items) {
      const keyNode = pair.key as Node | null;
      const keyAt = keyNode?.range ? placeAt(keyNode.range[0]) : start;
      const key = isScalar(keyNode) ? (scalarText(keyNode.value, keyNode.source) ?? '') : undefined;
      if (key === undefined || seen.has(key)) {
        problems.push(wrongKey(keyAt, key));
        continue;
      }
      seen.add(key);
      places.setKey([...path, key], keyAt.line, keyAt.column);
      const value = walk(pair.value as Node | null, [...path, key]);
      if (value !== undefined) Object.defineProperty(record, key, { value, enumerable: true });
    }
    return record;
  }

  const value = problems.length === 0 ? walk(document.contents as Node | null, []) : undefined;
  return { value, places, problems };
}

function wrongKey(place: Place, key: string | undefined): Problem {
  if (key === undefined)
    return problemAt(
      place,
      'yaml/key',
      'a list, a group or an alias stands where a name is wanted',
      'write name: value',
    );
  const said = 'broken YAML: Map keys must be unique';
  return problemAt(place, 'yaml/duplicate-key', said, 'remove one of the two');
}

// Numbers and booleans keep the text they were written with: `12.50` must not become 12.5.
function scalarText(value: unknown, source: string | undefined): string | undefined {
  if (value === null || value === undefined) return undefined;
  return typeof value === 'string' ? value : (source ?? String(value));
}

/** What the parser complains of. */
interface Broken {
  readonly code: string;
  readonly message: string;
}

function describe({ code, message }: Broken): string {
  if (code === 'MULTIPLE_DOCS') return 'a second document starts here';
  return message.split('\n')[0] ?? message;
}

function hintFor({ code, message }: Broken, row: string): string | undefined {
  const [, name, value] = /^\s*([a-zA-Z][\w-]*) +([^\s:#][^:#]*)$/.exec(row) ?? [];
  if (code === 'MULTILINE_IMPLICIT_KEY' && name) return `write ${name}: ${value?.trim()}`;
  if (/^Flow (sequence|map)/.test(message)) return 'close what is opened with [ or {';
  if (code === 'TAB_AS_INDENT' || /^ *\t/.test(row)) return 'indent with spaces';
  if (code === 'MULTIPLE_DOCS') return 'remove the line "---"';
  if (code === 'TAG_RESOLVE_FAILED' || code === 'BAD_SCALAR_START')
    return 'put quotes around a text that starts with a sign';
  if (code === 'BLOCK_AS_IMPLICIT_KEY' || code === 'MULTILINE_IMPLICIT_KEY')
    return 'put quotes around a text that contains ": "';
  if (code === 'BAD_INDENT' || code === 'MISSING_CHAR')
    return 'check indentation and quotes here and on the line above';
  if (code === 'UNEXPECTED_TOKEN')
    return 'put quotes around the whole text, or write name: value on a line of its own';
  return undefined;
}

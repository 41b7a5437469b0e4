import sharp from 'sharp';
import { parse, stringify } from 'yaml';
import type { z } from 'zod';
import { factsOf } from '../../src/model/facts.ts';
import { type ListKind, listKinds, singleKinds } from '../../src/model/kinds.ts';
import { readRecords } from '../../src/read/content.ts';
import type { RawValue } from '../../src/read/raw.ts';
import type { Files } from '../check/sound-files.ts';
import { everyKind, PHOTO } from '../fuzz/every-kind.ts';
import { aimed, attacks } from './attacks.ts';

type Fields = Record<string, unknown>;

/** Texts that name something: a file, a language, a zone. What may stand there is checked in other ways. */
const NAMES = new Set([
  'language',
  'timeZone',
  'file',
  'photo',
  'calc',
  'markKey',
  'receipt',
  'carried',
]);

/** Texts that may stand only where something else does. */
const NEEDS: Readonly<Record<string, string>> = {
  because: 'corrects',
  'risk-of': 'risk',
  label: 'label',
};

/** A project with a file of every kind, in which every text a builder can write is an attack, and which holds all of them. */
export async function hostileContent(): Promise<Files> {
  let next = 0;
  const attack = () => aimed[next++ % aimed.length] as string;
  const files: Record<string, string | Uint8Array> = {};
  for (const [file, text] of Object.entries(everyKind)) {
    const kind = /([a-z]+)(?:-\w+)?\.(?:csv|yaml)$/.exec(file)?.[1] ?? '';
    if (kind === 'site' || kind === 'project') {
      const schema = singleKinds[kind];
      files[file] = stringify(
        hostile(parse(text, { schema: 'failsafe' }) as Fields, schema, attack),
      );
    } else if (Object.hasOwn(listKinds, kind)) {
      const schema: z.ZodObject = listKinds[kind as ListKind];
      const { records } = readRecords(text, { kind: kind as ListKind, file });
      const rows = records.map(({ value }) => hostile(value as Fields, schema, attack));
      files[file.replace(/\.csv$/, '.yaml')] = stringify(
        kind === 'hours' ? [...rows, ...hoursOfAll()] : rows,
      );
    } else if (file.endsWith('.mdx')) files[file] = hostileEntry(text, attack);
    else files[file] = text;
  }
  const picture = { width: 60, height: 40, channels: 3, background: '#386' } as const;
  files[PHOTO] = await sharp({ create: picture }).jpeg().toBuffer();
  return files;
}

/** A row of hours for each attack: what was done that day. */
const hoursOfAll = () =>
  attacks.map((what, index) => ({
    id: `a-${index}`,
    date: '2025-03-09',
    hours: '0:01',
    phase: 'teardown',
    work: 'clean',
    what,
  }));

/** The same record with attacks in all its texts, those that it lacks included. */
function hostile(record: Fields, schema: z.ZodObject, attack: () => string): Fields {
  const changed: Fields = { ...record };
  for (const [field, inner] of Object.entries(schema.shape)) {
    const facts = factsOf(inner as z.ZodType);
    const needed = NEEDS[field];
    if (facts.reads === 'text' && isText(inner as z.ZodType) && !NAMES.has(field)) {
      if (field in record || needed === undefined || needed in record)
        changed[field] = facts.private ? 'kept at home' : attack();
    } else if (record[field] !== undefined) changed[field] = inside(record[field], inner, attack);
  }
  return changed;
}

/** Formulas are read as text too, and are no words. */
const isText = (schema: z.ZodType) => factsOf(schema).description !== 'arithmetic over the inputs';

/** Records inside a record, and lists of them. */
function inside(value: unknown, schema: unknown, attack: () => string): unknown {
  let type = schema as { unwrap?: () => unknown; element?: unknown; shape?: unknown };
  while (type.shape === undefined && type.element === undefined && type.unwrap)
    type = type.unwrap() as typeof type;
  if (type.shape !== undefined) return hostile(value as Fields, type as z.ZodObject, attack);
  if (type.element !== undefined && Array.isArray(value))
    return value.map((item: RawValue) =>
      typeof item === 'object' ? inside(item, type.element, attack) : item,
    );
  return value;
}

/** The entry with attacks in its front matter, its properties, its text and its code. */
function hostileEntry(text: string, attack: () => string): string {
  const [, head = '', body = ''] = /^---\n([\s\S]*?)---\n([\s\S]*)$/.exec(text) ?? [];
  const fields = hostile(parse(head, { schema: 'failsafe' }) as Fields, singleKinds.entry, attack);
  const inAttribute = () =>
    attack().replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
  const properties = body
    .replace('A ram that falls', inAttribute)
    .replace('It crushes a hand', inAttribute)
    .replace('Block it up', inAttribute)
    .replace('callouts />', () => `alt="${inAttribute()}" caption="${inAttribute()}" callouts />`);
  const written = aimed.map((one) =>
    one.replace(/[\\`*_{}[\]<>&|~"'$#:]/g, (sign) => `&#${sign.charCodeAt(0)};`),
  );
  const code = aimed.map((one) => one.replaceAll('`', ''));
  const link = `[text](https://x.example/?q=%22%3E%3Cscript%3Ealert(1)%3C/script%3E "${inAttribute()}")`;
  return `---\n${stringify({ ...fields, tags: aimed.slice(0, 3) })}---\n${properties}
${link}

${written.map((one) => `- ${one}`).join('\n')}

## Heading ${written[0]}

\`\`\`\`html
${code.join('\n')}
\`\`\`\`
`;
}

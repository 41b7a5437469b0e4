import type { Calendar } from './calendar.ts';
import { foldedLine } from './calendar-lines.ts';
import type { Outcome } from './outcome.ts';

type Refused = Extract<Outcome, { is: 'refused' }>;

/** Name of the line with the reason: one that starts with X- is passed over by every other program (RFC 5545, 3.8.8.2). */
const REASON = 'X-REFUSED-BECAUSE';

/** Refused components as a calendar that the same mapping reads: time zones as they were, and each component with its own bytes. */
export function refusedCalendar(
  { components, zones, properties }: Calendar,
  refused: readonly Refused[],
): Uint8Array {
  const why = new Map(refused.map((one) => [one.line, one.why]));
  const head = properties.filter(({ name }) => name !== 'METHOD' && name !== '');
  const once = head.filter(
    ({ name }, index) => head.findIndex((one) => one.name === name) === index,
  );
  const kept = components.filter(({ line }) => why.has(line));
  return Buffer.concat([
    Buffer.from('BEGIN:VCALENDAR\r\n'),
    ...[...once, ...zones.flatMap(({ lines }) => lines)].map(({ bytes }) => bytes),
    ...kept.flatMap(({ line, lines }) => {
      const own = lines.filter(({ name }) => name !== REASON).map(({ bytes }) => bytes);
      const told = `line ${line}: ${why.get(line)}`
        .replace(/[\\;,]/g, '\\$&')
        .replace(/\n/g, '\\n');
      return [...own.slice(0, 1), Buffer.from(foldedLine(`${REASON}:${told}`)), ...own.slice(1)];
    }),
    Buffer.from('END:VCALENDAR\r\n'),
  ]);
}

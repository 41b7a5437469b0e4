// Adds rows of hours to the press one after the other, and prints each once it is written: a process of its own, to run beside others
// and to be killed.
import { writeSync } from 'node:fs';
import { writeRows } from '../../src/write/write-rows.ts';

const [content = '', name = '', count = ''] = process.argv.slice(2);
for (let n = 1; n <= Number(count); n++) {
  const fields = { date: '2025-05-01', phase: 'rebuild', what: `${name} row ${n};` };
  const hours = { kind: 'hours', fields: { ...fields, hours: '0:01', work: 'fit' } } as const;
  const cost = { kind: 'costs', fields: { ...fields, amount: '1', category: 'tool' } } as const;
  const rows = n % 3 === 0 ? [hours, cost] : [n % 2 === 0 ? cost : hours];
  const done = await writeRows(content, 'press', rows, { now: new Date('2025-06-15T12:00:00Z') });
  if ('problems' in done) throw new Error(done.problems.map(({ message }) => message).join('\n'));
  for (const { id } of done.written) writeSync(1, `${id} ${fields.what}\n`);
}

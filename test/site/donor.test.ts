import { describe, expect, test } from 'vitest';
import { donorAccount } from '../../src/cost/donor.ts';
import { partCosts } from '../../src/cost/part-costs.ts';
import { showMoney } from '../../src/money/money.ts';
import { toldIn } from '../words/told.ts';
import { openBuiltDemo } from './built-book.ts';
import { select, textOf } from './pages.ts';

const { book, page } = await openBuiltDemo();
const donors = book.projects.flatMap((project) =>
  project.sources
    .filter(({ kind }) => kind === 'donor')
    .map((source) => ({ project, source, name: `${project.id}/${source.id}` })),
);
const shown = (money: Parameters<typeof showMoney>[0]) => showMoney(money, 'en-GB');

describe.each(donors)('the page of the donor $name', ({ project, source }) => {
  const { root } = page(`${project.id}/donors/${source.id}/`);
  const account = donorAccount(project.now, source);

  test('shows every line of the account, and opens it to its rows', () => {
    const [table] = select(root, 'table.account');
    const rows = table ? select(table, 'tr').slice(1) : [];
    for (const [index, { name, figure }] of account.lines.groups.entries()) {
      const row = rows[index];
      expect(row && textOf(row)).toContain(toldIn(name));
      expect(row && textOf(row)).toContain(shown(figure.value));
      expect(row && select(row, 'li')).toHaveLength(figure.rows.length);
    }
    const net = table && select(table, '.sum');
    expect(net?.map(textOf).join()).toContain(shown(account.lines.total.value));
  });

  test('shares the net cost over the parts that have a value, or says that none has', () => {
    const section = textOf(root);
    if (account.shares.length === 0) expect(section).toContain('has a stated value');
    for (const { part, money } of account.shares) {
      expect(section).toContain(part.name);
      expect(section).toContain(`(${shown(money)})`);
    }
  });
});

test.each(book.projects.map(({ id }) => id))(
  'the costs by part of %s add up to all that was spent',
  (id) => {
    const project = book.project(id);
    if (project === undefined) throw new Error(`no project ${id}`);
    const { root } = page(`${id}/costs/parts/`);
    const { inParts, bearers } = partCosts(project.now);
    const [lead] = select(root, '.lead');
    expect(lead && textOf(lead)).toContain(shown(inParts));
    const groups = select(root, '.group');
    expect(groups.map((group) => select(group, 'li').length)).toEqual(
      bearers.groups.map(({ figure }) => figure.rows.length),
    );
  },
);

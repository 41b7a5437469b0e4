import { projectOf, type Written } from '../book/project-of.ts';

const cost = (id: string, amount: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-02', amount, category: 'vehicle', phase: 'strip', source: 'spare' },
  ...{ what: 'A thing', ...rest },
});

/** A project with a donor that brought in more than it cost, so that its steps cross zero, with something left to sell. */
export const sparePress = projectOf({
  lists: {
    sources: [{ id: 'spare', kind: 'donor', name: 'The spare press' }],
    costs: [
      cost('c-1', '60.00'),
      cost('c-2', '20.00', { category: 'transport' }),
      cost('c-3', '130.00', { kind: 'sale' }),
    ],
    parts: [
      {
        ...{ id: 'table', name: 'Table', system: 'body', source: 'spare', got: '2025-03-02' },
        ...{ 'for-sale': '2025-03-02', asking: '15.00' },
      },
    ],
  },
});

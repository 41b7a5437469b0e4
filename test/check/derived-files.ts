import type { Changes } from './content-folder.ts';

export const READINGS = 'press/ledger/readings-more.csv';
export const HEAD = 'id,spec,date,state,values,unit,instrument';

/** A record of `specs-derived.yaml`; the lines given start at line 7, column 3. */
export const spec = (id: string, ...lines: readonly string[]) =>
  `- id: ${id}
  name: A derived spec
  about: Worked out of others.
  quantity: length
  unit: mm
  system: ram
${lines.map((line) => `  ${line}\n`).join('')}`;

/** The spec `half` with these lines. */
export const derived = (...lines: readonly string[]): Changes => ({
  'press/specs-derived.yaml': spec('half', ...lines),
});

/** Specs and readings for a height of the centre of gravity that can be worked out. */
export const raised = (rise: string, wheelbase: string, front = '640'): Changes => ({
  'press/specs-derived.yaml': `${['base', 'rise', 'radius'].map((id) => spec(id)).join('')}${[
    'front',
    'rear',
    'lifted',
  ]
    .map((id) => spec(id).replace('length', 'mass').replace('mm', 'kg'))
    .join('')}${spec(
    'height',
    'calc: cg-height-raised-axle',
    'inputs: { L: base, Wf: front, Wr: rear, Wq: lifted, H: rise, Rf: radius, Rr: radius }',
  )}`,
  'press/instruments-more.yaml': '- id: scale\n  name: Scale\n  quantity: mass\n',
  [READINGS]: `${HEAD}
${[
  `base,2025-04-13,after,${wheelbase},mm,dial-indicator`,
  `rise,2025-04-13,after,${rise},mm,dial-indicator`,
  'radius,2025-04-13,after,300,mm,dial-indicator',
  `front,2025-04-13,after,${front},kg,scale`,
  'rear,2025-04-13,after,560,kg,scale',
  'lifted,2025-04-13,after,700,kg,scale',
]
  .map((row, index) => `r-1${index},${row}`)
  .join('\n')}
`,
});

/** What columns hold that mean something of their own in one table. */
export const ofTable = {
  entries: {
    id: 'name of its page',
  },
  rows: {
    id: 'id of the row',
    kind: 'its table',
  },
  spec_inputs: {
    name: 'its name in the formula or calculation',
  },
  people: {
    name: 'public name',
  },
  costs: {
    phase: 'the phase that bears it all; where several do, they stand in cost_phases',
  },
  cost_phases: {
    phase: 'the phase that bears it',
  },
  hours: {
    source: 'machine that was worked on, when it is not the one being built',
  },
  rates: {
    source: 'where the rate was read',
    rate: 'how many of the second currency one of the first is',
  },
  findings: {
    source: "which machine's version of the part, when it is not the part's own source",
    photo: 'file in photos/ that shows it',
    found: 'found',
  },
  readings: {
    because: 'why values are excluded, or why it replaces the earlier reading',
  },
  groups: {
    because: 'why they go together, and what follows from it',
  },
  choices: {
    because: 'why',
  },
  withdrawals: {
    because: 'why it no longer counts',
  },
  cost_parts: {
    part: 'the part that bears it',
  },
  order_parts: {
    part: 'the part',
  },
  group_parts: {
    part: 'the part',
  },
  preparation_parts: {
    part: 'the part',
  },
  entry_moments: {
    part: 'the part that it is about',
    spec: 'the spec that it is about',
  },
  reading_values: {
    value: 'in the unit of its reading',
  },
  candidates: {
    value: "stated value of a donor's part, by which it would bear its share",
  },
  entry_tells: {
    row: 'the row',
  },
};

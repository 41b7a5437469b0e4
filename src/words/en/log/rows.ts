/** Rows of the ledger, each in a line, and how many of them an entry added. */
export const rows = {
  reading: (spec: string) => `Reading: ${spec}`,
  search: (part: string) => `Searched for: ${part}`,
  budget: (of: string) => `Budget: ${of}`,
  contingency: 'contingency',
  wait: (what: string) => `Waited: ${what}`,
  amountFor: (amount: string, of: string) => `${amount} for ${of}`,
  waits: (phase: string, what: string) => `${phase} waits: ${what}`,
  steps: {
    wanted: (day: string) => `wanted ${day}`,
    ordered: (day: string) => `ordered ${day}`,
    got: (day: string) => `got ${day}`,
    fitted: (day: string) => `fitted ${day}`,
    scrapped: (day: string) => `scrapped ${day}`,
    sold: (day: string) => `sold ${day}`,
  },
  takenBack: (what: string) => `Taken back: ${what}`,
  less: (added: string, takenBack: number) => `${added}, less ${takenBack} taken back`,
  fitted: (count: number) => `${count} ${count === 1 ? 'part' : 'parts'} fitted`,
  fittedSoFar: (count: number) => `${count} ${count === 1 ? 'part' : 'parts'} fitted so far`,
  read: (count: number) => `${count} ${count === 1 ? 'reading' : 'readings'}`,
  readSoFar: (count: number) => `${count} ${count === 1 ? 'reading' : 'readings'} so far`,
};

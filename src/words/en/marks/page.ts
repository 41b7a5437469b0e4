/** The page of marks, and what the check in the browser says. */
export const page = {
  title: 'Marks',
  description: (project: string) =>
    `What shows that published rows of ${project} were not changed afterwards, and how to check it.`,
  lead: (rows: string) =>
    `On the days below the ledger was marked: every row of it went into one number, its root. ${rows} are under the newest. Change a row, move it or take it out, and the root is another.`,
  theMarks: 'The marks',
  keepACopy:
    'They are in {marks}. Keep a copy of it: with that, nobody can show you another past later. A part, an order or a preparation that has grown since (fitted, closed, back) is in a later mark again, under its own id; the earlier line stays.',
  shows: 'What this shows, and what it does not',
  tamperEvident: 'tamper-evident',
  evident:
    'The ledger is {tamperEvident}: that a row under a mark was changed, moved or removed afterwards can be seen by anybody.',
  notTrue:
    'It cannot show that a row is true, or that none is missing: what was never written is not in it.',
  date: "The date of a mark is the builder's word, unless somebody kept a copy from that day. Rows dated before the first mark could have been written on its day.",
  private:
    'What stays private is there as a hash with a secret salt: the builder can show later what was recorded, and nobody can guess it from the hash. A receipt or photo is there by its SHA-256, so that the file can be told from any other.',
  inBrowser: 'Check it in this browser',
  loads:
    'It loads {rows}, {marks} and {proofs} of this site, works out every hash anew, and sends nothing anywhere. The {script} is short enough to read.',
  script: 'script',
  needsScript: 'This needs JavaScript. The way below does not.',
  onYourMachine: 'Check it on your own machine',
  python: 'With Python 3 and nothing else. {verifier} is short, so read it first.',
  commands: 'Commands to download and check',
  kept: 'With a marks.txt that you kept from an earlier visit, it also checks that the marks of today only add to it:',
  keptCommand: 'Command to check against a kept file',
  key: 'The key, and its signatures',
  signature:
    'A signature shows that whoever has the key made the mark, date included. The public key is {file}, or as a line:',
  publicKey: 'Public key',
  openssl:
    'With OpenSSL 3, beside key.pem. The four lines and the signature are those of the newest signed mark in marks.txt; the first four of its bytes there only name the key.',
  signatureCommands: 'Commands to check the signature',
  check: {
    everyRow: 'Check every row',
    older: 'An older marks.txt that you kept, if any',
    checking: 'Checking …',
    showProof: 'Show its proof',
    id: 'Id of one row, such as c-001',
    searching: 'Searching …',
  },
};

import { soundFiles } from '../check/sound-files.ts';
import { correctedFiles } from '../site/corrected-files.ts';

/** The sound project with corrections, and a file of every other kind: small, so that it can be read many times a second. */
export const everyKind: Readonly<Record<string, string>> = {
  ...correctedFiles,
  'site.yaml': `${soundFiles['site.yaml']}tagline: One machine at a time.
contact: ines@shed.example
moved:
  - from: press/specs/play/
    to: press/specs/ram-play/
`,
  'press/project.yaml': `${soundFiles['press/project.yaml']}builder: Ines Marlow
week:
  tuesday: "1:00"
  saturday: "5:30"
away:
  - from: 2025-04-20
    to: 2025-04-27
    why: Easter
rules: { tools: 40 %, gifts: in, labourRate: 14.00 }
identity:
  keeps: press
  because: Its frame stays.
  marks:
    - { what: frame number, where: under the table, source: press, value: W-3-1931, released: true }
  papers:
    - { what: bill of sale, source: press, held: true }
dossier: { costs: rows, photos: all }
`,
  'press/specs-derived.yaml': `- id: play-left
  name: Play left over
  about: What is left of the play that is allowed.
  quantity: length
  unit: mm
  system: ram
  formula: limit - play * 2 / 4
  inputs: { limit: 0.10 mm, play: ram-play }
`,
  'press/groups.yaml': `- id: ram-and-nut
  name: Ram with its nut
  parts: [gib, nut]
  because: Whoever changes one has to fit the other.
`,
  'press/surveys.yaml': `- id: first
  name: As found
  date: 2025-03-02
  by: ines
`,
  'press/grades.yaml': `- id: good
  name: good
  definition: Runs as it should.
  remaining-at-least: 80 %
  allows: [sound]
- id: bad
  name: bad
  definition: Anything else.
`,
  'press/photos.yaml': `- id: ram-photo
  file: ram.jpg
  alt: The ram in its slides
  caption: "The ram: \\"true\\" again"
  phase: rebuild
  parts: [gib]
  tags: [plate]
  hide:
    - what: plate
      box: [0.41, 0.62, 0.18, 0.06]
    - what: face
      outline: [[0.1, 0.2], [0.2, 0.2], [0.15, 0.3]]
  straighten: -1.5
  crop: [0, 0.1, 1, 0.8]
  callouts:
    - { at: [0.31, 0.4], part: gib }
    - { at: [0.1, 0.8], to: [0.6, 0.8], spec: ram-play }
    - { at: [0.5, 0.5], label: A crack }
`,
  'press/ledger/costs-more.yaml': `- id: c-010
  date: 2025-03-20
  amount: 30.00
  tax: inside
  tax-rate: 20 %
  category: material
  split-phases: [teardown:2, rebuild:1]
  what: |
    Oil, grease
    and rag
  withhold: what
- id: c-011
  date: 2025-03-21
  amount: 4.00
  category: part
  phase: rebuild
  order: o-1
  what: First part of the order
  note: "Paid in coins: 4 of them"
`,
  'press/ledger/orders.csv': `id,date,amount,category,phase,source,parts,what,supplier
o-1,2025-03-19,10.00,part,rebuild,,nut,"A nut, bronze",A foundry
`,
  'press/ledger/budgets.yaml': `- id: b-1
  date: 2025-03-01
  amount: 300.00
  phase: rebuild
- { id: b-2, date: 2025-03-01, amount: 50, contingency: true }
`,
  'press/ledger/findings.yaml': `- id: f-001
  date: 2025-03-02
  survey: first
  part: gib
  found: wear
  photo: ram.jpg
  at: [0.2, 0.3]
  note: Along its upper half
`,
  'press/ledger/candidates.yaml': `- id: ca-1
  date: 2025-03-04
  part: gib
  source: spare-press
  hours: "2:00"
  availability: in-hand
  risk: low
- id: ca-2
  date: 2025-03-04
  part: nut
  source: press
  price: "12.00"
  hours: "3:00"
  availability: to-make
  risk: medium
  risk-of: A thread that binds
`,
  'press/ledger/choices.yaml': `- id: ch-1
  date: 2025-03-06
  candidates: [ca-1, ca-2]
  group: ram-and-nut
  because: They have run together.
`,
  'press/ledger/preparations.csv': `id,date,parts,kind,what,out,place,due,back
p-1,2025-03-15,gib,machining,Planed true,true,The planing shop,2025-03-22,2025-03-24
`,
  'press/ledger/waits.csv': `id,date,phase,for,preparation,what,expected,until
wa-1,2025-03-15,rebuild,preparation,p-1,The gib is away,2025-03-22,2025-03-24
`,
  'press/imports.yaml': `- id: bank
  files: statement-*.csv
  kind: costs
  separator: ";"
  columns: { date: Day, amount: Sum, what: [Who, What], key: No }
  dates: DD.MM.YYYY
  decimals: "1.234,56"
  fixed: { category: other, phase: rebuild }
  rules:
    - { has: groceries, skip: nothing of this machine }
    - { column: Who, has: [mill, lathe], set: { category: tool } }
`,
  'press/entries/2025-04-13-the-ram-slides.mdx': `---
title: The ram slides
date: 2025-04-13
phase: rebuild
summary: "The gib is in: the play is gone."
tells: [h-002, r-002]
video: https://video.example/watch/1
moments:
  - { at: "0:50", label: The gib goes in, part: gib }
  - at: "4:32"
    label: The dial
    spec: ram-play
tags: [ram, measuring]
---

The [play](spec:ram-play) is down to <Spec of="ram-play" />, see <AtTime at="4:32">the dial</AtTime> and [the cost][1].

[1]: row:c-003

<Hazard signal="WARNING" hazard="A ram that falls" harm="It crushes a hand" avoid="Block it up" />

| Side | Play |
| --- | ---: |
| Left | <Spec of="ram-play" state="after" /> |

- \`code {x}\` and *more*
  1. nested[^1]

[^1]: A note with <kbd>Esc</kbd>.

{/* a comment */}

<Photo file="ram.jpg" callouts />

<Change of={["ram-play"]} />

<Costs phase="rebuild" />

<Tally />
`,
};

/** A file that a project may hold and nothing reads as text. */
export const PHOTO = 'press/photos/ram.jpg';

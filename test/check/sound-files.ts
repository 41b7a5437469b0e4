/** Path inside the content folder → what the file holds. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

/** A small project of an invented machine in which every kind of file is there and nothing is wrong. */
export const soundFiles: Files = {
  'site.yaml': `title: A shed and a press
address: https://shed.example/
language: en-GB
builder: Ines Marlow
`,
  'press/project.yaml': `name: Wendlebury press
summary: A fly press taken apart and put back true.
machine:
  maker: Wendlebury
  model: No. 3
  year: 1931
  kind: fly press
currency: GBP
timeZone: Europe/London
work: [clean, fit]
people:
  - id: ines
    name: Ines Marlow
  - id: helper-one
`,
  'press/sources.yaml': `- id: press
  kind: base
  name: The press from the barn
- id: spare-press
  kind: donor
  name: A second press with a cracked frame
`,
  'press/phases.yaml': `- id: teardown
  name: Teardown
  summary: Everything comes apart.
  planned-start: 2025-03-01
  planned-finish: 2025-03-31
  planned-hours: "12:00"
- id: rebuild
  name: Rebuild
  summary: Everything goes together.
  planned-start: 2025-04-01
  planned-finish: 2025-05-31
  planned-hours: "30:00"
  after: [teardown]
`,
  'press/specs.yaml': `- id: ram-play
  name: Play of the ram
  about: Side play of the ram in its slides, at half stroke.
  quantity: length
  unit: mm
  system: ram
  max: 0.10 mm
  better: lower
- id: screw-torque
  name: Torque to turn the screw
  about: Torque that turns the free screw.
  quantity: torque
  unit: N·m
  system: screw
`,
  'press/instruments.yaml': `- id: dial-indicator
  name: Dial indicator
  quantity: length
  step: 0.01 mm
- id: torque-wrench
  name: Beam torque wrench
  quantity: torque
  step: 0.5 N·m
  calibrated: 2024-05-01
  calibration-due: 2025-05-01
`,
  'press/ledger/hours.csv': `id,date,hours,phase,work,who,what
h-001,2025-03-02,2:30,teardown,clean,,Cleaned the frame
h-002,2025-03-08,5:00,teardown,fit,helper-one,Screw out
`,
  'press/ledger/costs.csv': `id,date,amount,category,phase,source,parts,what
c-001,2025-03-01,180,vehicle,teardown,press,,The press
c-002,2025-03-10,12.50,part,rebuild,spare-press,gib,A gib from the spare press
`,
  'press/ledger/parts.yaml': `- id: gib
  name: Gib
  system: ram
  source: spare-press
  got: 2025-03-10
  fitted: 2025-04-12
- id: nut
  name: Bronze nut
  system: screw
  source: press
`,
  'press/ledger/readings.csv': `id,spec,date,state,values,unit,instrument
r-001,ram-play,2025-03-02,as-found,0.41 0.42 0.41,mm,dial-indicator
r-002,ram-play,2025-04-13,after,0.08 0.08 0.09,mm,dial-indicator
`,
  'press/ledger/searches.csv': `id,date,part,result,price
s-001,2025-03-05,gib,listed-not-held,14.00
`,
  'press/entries/2025-04-13-the-ram-slides.mdx': `---
title: The ram slides
date: 2025-04-13
phase: rebuild
summary: The gib is in and the play is gone.
tells: [h-002, r-002]
---

The [play](spec:ram-play) is down to <Spec of="ram-play" />.

<Change of="ram-play" />

<Tally />
`,
  'press/photos/ram.jpg': 'a picture',
};

import { soundFiles } from '../check/sound-files.ts';

// Its picture is none, and is not what is looked at here.
const texts = Object.fromEntries(
  Object.entries(soundFiles).flatMap(([file, text]) =>
    typeof text === 'string' && !file.includes('/photos/') ? [[file, text]] : [],
  ),
);

/** The sound project, whose dossier tells no money, with a corrected cost at a corrected rate, withdrawn hours, and a corrected reading, search and part. */
export const correctedFiles: Readonly<Record<string, string>> = {
  ...texts,
  'press/project.yaml': `${texts['press/project.yaml']}dossier:\n  costs: none\n`,
  'press/ledger/costs.csv': `id,date,recorded,amount,category,phase,source,parts,what,corrects,because
c-001,2025-03-01,,180,vehicle,teardown,press,,The press,,
c-002,2025-03-10,,12.50,part,rebuild,spare-press,gib,A gib from the spare press,,
c-003,2025-03-10,2025-04-20,11.50,part,rebuild,spare-press,gib,A gib from the spare press,c-002,Misread the receipt
c-004,2025-03-12,,10.00 EUR,part,rebuild,,,A seal,,
`,
  'press/ledger/rates.csv': `id,date,recorded,from,to,rate,source,corrects,because
x-001,2025-03-01,,EUR,GBP,0.8,Statement,,
x-002,2025-03-01,2025-04-22,EUR,GBP,0.9,Statement,x-001,Read the wrong line
`,
  'press/ledger/readings.csv': `id,spec,date,recorded,state,values,unit,instrument,corrects,because
r-001,ram-play,2025-03-02,,as-found,0.41 0.42 0.41,mm,dial-indicator,,
r-002,ram-play,2025-04-13,,after,0.08 0.08 0.09,mm,dial-indicator,,
r-003,ram-play,2025-03-02,2025-04-21,as-found,0.44 0.45 0.44,mm,dial-indicator,r-001,The dial was not zeroed
`,
  'press/ledger/searches.csv': `id,date,recorded,part,result,price,corrects,because
s-001,2025-03-05,,gib,listed-not-held,14.00,,
s-002,2025-03-05,2025-04-21,gib,none,,s-001,It was for another press
`,
  'press/ledger/withdrawals.csv': `id,date,row,because
w-001,2025-04-23,h-001,Counted twice
`,
};

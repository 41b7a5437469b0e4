import { ledgerFiles } from '../../../publish/ledger-marks.ts';
import { markFile } from '../../../site/mark-file.ts';

export const { getStaticPaths, GET } = markFile(
  'application/json',
  (project) => ledgerFiles(project)['proofs.json'],
);

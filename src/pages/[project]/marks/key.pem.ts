import { publicKeyPem } from '../../../publish/ledger-marks.ts';
import { markFile } from '../../../site/mark-file.ts';
import { signedPaths } from '../../../site/paths.ts';

const { GET } = markFile('application/x-pem-file', (project) => publicKeyPem(project) ?? '');
export const getStaticPaths = signedPaths;
export { GET };

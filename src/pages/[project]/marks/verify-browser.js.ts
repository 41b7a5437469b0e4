import { markFile } from '../../../site/mark-file.ts';
import verifier from '../../../trust/verify/verify-browser.js?raw';

export const { getStaticPaths, GET } = markFile('text/javascript', () => verifier);

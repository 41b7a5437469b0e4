import { markFile } from '../../../site/mark-file.ts';
import verifyPy from '../../../trust/verify/verify.py?raw';

export const { getStaticPaths, GET } = markFile('text/x-python', () => verifyPy);

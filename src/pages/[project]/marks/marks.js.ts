import { markFile } from '../../../site/mark-file.ts';
import page from '../../../trust/verify/marks-page.js?raw';

export const { getStaticPaths, GET } = markFile('text/javascript', () => page);

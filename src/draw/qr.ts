import { create } from 'qrcode';
import { node, type SvgNode } from './svg.ts';

/** Quiet zone around the code, in modules; ISO/IEC 18004 asks for four. */
const QUIET = 4;

/** An address as a QR code (error correction M), one path of dark modules on a light ground whatever the colour scheme. */
export function drawQr(address: string, label: string): SvgNode {
  const { modules } = create(address, { errorCorrectionLevel: 'M' });
  const size = modules.size + 2 * QUIET;
  let path = '';
  for (let y = 0; y < modules.size; y++) {
    // A row is one line, as thick as a module is high, with gaps: half as long as a box for each run.
    let gap = QUIET;
    path += `M0 ${y + QUIET}.5`;
    for (let x = 0; x < modules.size; x++) {
      let run = 0;
      while (x + run < modules.size && modules.get(y, x + run)) run++;
      if (run > 0) path += `m${gap} 0h${run}`;
      gap = run > 0 ? 1 : gap + 1;
      x += run;
    }
  }
  return node(
    'svg',
    {
      class: 'qr',
      viewBox: `0 0 ${size} ${size}`,
      width: 132,
      height: 132,
      role: 'img',
      'aria-label': label,
      'shape-rendering': 'crispEdges',
    },
    node('rect', { width: size, height: size, fill: '#fff' }),
    node('path', { d: path, stroke: '#000' }),
  );
}

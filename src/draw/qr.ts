import { create } from 'qrcode';
import { node, type SvgNode } from './svg.ts';

/** Quiet zone around the code, in modules; ISO/IEC 18004 asks for four. */
const QUIET = 4;

/** An address as a QR code (error correction M), one path of dark modules on a light ground whatever the colour scheme. */
export function drawQr(address: string): SvgNode {
  const { modules } = create(address, { errorCorrectionLevel: 'M' });
  const size = modules.size + 2 * QUIET;
  let path = '';
  for (let y = 0; y < modules.size; y++) {
    for (let x = 0; x < modules.size; x++) {
      if (!modules.get(y, x)) continue;
      let run = 1;
      while (x + run < modules.size && modules.get(y, x + run)) run++;
      path += `M${x + QUIET} ${y + QUIET}h${run}v1h-${run}z`;
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
      'aria-label': `QR code of ${address}`,
      'shape-rendering': 'crispEdges',
    },
    node('rect', { width: size, height: size, fill: '#fff' }),
    node('path', { d: path, fill: '#000' }),
  );
}

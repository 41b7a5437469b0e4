import { create } from 'qrcode';
import { CODE_MINUTES, showCode } from './pairing.ts';

/** What the terminal shows of a pairing code: where to go, the code, and both as a QR code. */
export function describeCode(address: string, code: string): string {
  const whole = `${address}#pair=${code}`;
  return `${drawInTerminal(whole)}\nPair a phone:  ${whole}\nCode:          ${showCode(code)}   (once, within ${CODE_MINUTES} minutes)\n`;
}

/** Two rows of modules in one line of half blocks, dark on light whatever the terminal's colours. */
function drawInTerminal(text: string): string {
  const { modules } = create(text, { errorCorrectionLevel: 'L' });
  const dark = (x: number, y: number) =>
    x >= 0 && y >= 0 && x < modules.size && y < modules.size && modules.get(y, x) === 1;
  const lines: string[] = [];
  for (let y = -2; y < modules.size + 2; y += 2) {
    let line = '';
    for (let x = -2; x < modules.size + 2; x++)
      line += BLOCKS[(dark(x, y) ? 1 : 0) + (dark(x, y + 1) ? 2 : 0)];
    lines.push(`\u001b[30;107m${line}\u001b[0m`);
  }
  return lines.join('\n');
}

const BLOCKS = [' ', '▀', '▄', '█'];

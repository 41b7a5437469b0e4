import { drawQr } from './qr.ts';
import { writeSvg } from './svg.ts';

/** A QR code of an address as the text of an SVG element, for a browser that draws one when it is asked for. */
export function qrText(address: string, label = address): string {
  return writeSvg(drawQr(address, label));
}

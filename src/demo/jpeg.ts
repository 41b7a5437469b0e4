import sharp from 'sharp';
import { phoneExif } from './phone-exif.ts';
import { MACHINES, type Picture } from './pictures.ts';
import { sheet } from './sheet.ts';

/** The pictures are in the repository, so that none may be large. */
const BYTES_AT_MOST = 108_000;
const QUALITIES = [72, 68, 64, 60, 56, 52, 48] as const;

/** The picture as a JPEG of 2 000 by 1 500 pixels, as good as its size allows; the same bytes every time. */
export async function drawJpeg({ project, day, title, scene }: Picture): Promise<Buffer> {
  const svg = sheet(scene(), { machine: MACHINES[project], title, day });
  // A breath of softness, as from a lens: it spares the coder the hard edges and a seventh of the bytes.
  const raster = await sharp(Buffer.from(svg))
    .removeAlpha()
    .blur({ sigma: 0.9, precision: 'float' })
    .png({ compressionLevel: 1 })
    .toBuffer();
  let jpeg = Buffer.alloc(0);
  for (const quality of QUALITIES) {
    jpeg = await sharp(raster)
      .withExif(phoneExif(day))
      .jpeg({ quality, mozjpeg: true, chromaSubsampling: '4:2:0' })
      .toBuffer();
    if (jpeg.length <= BYTES_AT_MOST) break;
  }
  return jpeg;
}

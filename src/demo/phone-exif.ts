import type { Exif } from 'sharp';

/** Camera model that marks a file as written by this script. */
export const MODEL = 'Demo 1';

/**
 * What a phone would leave in a photo, all of it invented: maker, owner, a place in the open sea, a private remark.
 * The site has to strip every bit; a test looks for it in what is published.
 */
export function phoneExif(day: string): Exif {
  const moment = `${day.replaceAll('-', ':')} 14:05:00`;
  return {
    IFD0: {
      Make: 'Invented Camera',
      Model: MODEL,
      Artist: 'Tamsin Ord private',
      ImageDescription: 'private: taken at home',
      DateTime: moment,
    },
    // libvips numbers the blocks: IFD2 is the Exif block, IFD3 the GPS block.
    IFD2: { DateTimeOriginal: moment, DateTimeDigitized: moment },
    IFD3: {
      GPSLatitudeRef: 'N',
      GPSLatitude: '49/1 30/1 0/1',
      GPSLongitudeRef: 'W',
      GPSLongitude: '12/1 15/1 0/1',
    },
  };
}

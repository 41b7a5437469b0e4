import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** A photograph that a camera or a phone took, with all that it wrote into the file. */
export interface RealPhoto {
  readonly name: string;
  readonly path: string;
  /** Words in its bytes that tell of its owner, its maker or its camera. */
  readonly tells: readonly string[];
  /** Whether it says where it was taken. */
  readonly place: boolean;
  /** Day it was taken, as `exiftool -DateTimeOriginal` (12.57) gives it. */
  readonly taken: string;
}

/** Test pictures that two packages bring along: exif 0.6.0 and jpeg-exif 1.1.4, both under the MIT licence. */
const PICTURES = [
  ['exif', 'sony-alpha-6000.jpg', ['ILCE-6000', 'SONY'], false, '2014-04-18'],
  ['exif', 'short-ascii-II.jpg', ['XIAOMI'], false, '2015-02-28'],
  ['exif', 'short-ascii-MM.jpg', ['Andreas Huggel', 'Canon'], false, '2003-12-14'],
  ['exif', 'evil1.jpg', ['PowerShot S400'], false, '2003-05-24'],
  ['exif', 'test1.jpg', ['iPhone 4S'], true, '2013-02-06'],
  ['exif', 'test3.jpg', ['iPhone 4S'], true, '2012-12-22'],
  ['jpeg-exif', 'IMG_0001.JPG', ['iPhone 6 Plus', 'Apple'], true, '2016-03-24'],
] as const;

/** The real photographs; none where the packages that hold them are not installed. */
export function realPhotos(): RealPhoto[] {
  const from = createRequire(import.meta.url);
  const folderOf = (name: string) => {
    try {
      return join(dirname(from.resolve(`${name}/package.json`)), 'test');
    } catch {
      return undefined;
    }
  };
  return PICTURES.flatMap(([owner, name, tells, place, taken]) => {
    const folder = folderOf(owner);
    return folder ? [{ name, path: join(folder, name), tells, place, taken }] : [];
  });
}

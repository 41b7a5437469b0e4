import sharp from 'sharp';

const PARTS = ['sharp', 'vips', 'heif', 'aom', 'webp', 'mozjpeg', 'rsvg', 'png', 'zlib-ng'];
const versions: Readonly<Record<string, string | undefined>> = sharp.versions;

/** Versions of what decodes, changes and encodes pictures: another one may give other bytes, so that nothing made by it passes for its work. */
export const LIBRARY: string = PARTS.map((part) => `${part} ${versions[part]}`).join(', ');

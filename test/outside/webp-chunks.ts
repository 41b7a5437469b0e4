/**
 * The chunks of a WebP file by name, in order (RFC 9649 section 2.3: four letters, a 32-bit length, the bytes, padded to an even length).
 * What a reader would not look for, because it stands after the end that the file gives itself, is listed as `after the end`.
 */
export function webpChunks(bytes: Buffer): Map<string, Buffer> {
  if (bytes.toString('latin1', 0, 4) !== 'RIFF' || bytes.toString('latin1', 8, 12) !== 'WEBP')
    throw new Error('not a WebP file');
  const end = bytes.readUInt32LE(4) + 8;
  const chunks = new Map<string, Buffer>();
  for (let at = 12; at < end; ) {
    const length = bytes.readUInt32LE(at + 4);
    chunks.set(
      bytes.toString('latin1', at, at + 4).trim(),
      bytes.subarray(at + 8, at + 8 + length),
    );
    at += 8 + length + (length % 2);
  }
  if (end < bytes.length) chunks.set('after the end', bytes.subarray(end));
  return chunks;
}

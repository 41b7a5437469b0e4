import type { IncomingMessage } from 'node:http';

/** A body as it came, or why it was not taken: `late` is a body that dawdled, `gone` one that was broken off. */
export type Body = { readonly bytes: Buffer } | { readonly refused: 'large' | 'late' | 'gone' };

/** How much of a body is taken, and how long it may take. */
export interface Limit {
  readonly bytes: number;
  readonly ms: number;
}

/** Reads a body up to its limits; what is over them is not kept in memory. */
export function readBody(request: IncomingMessage, limit: Limit): Promise<Body> {
  const announced = Number(request.headers['content-length'] ?? 0);
  if (announced > limit.bytes) return Promise.resolve({ refused: 'large' });
  return new Promise((resolve) => {
    const chunks: Buffer[] = [];
    let size = 0;
    const end = (body: Body) => {
      clearTimeout(timer);
      request.off('data', take).pause();
      resolve(body);
    };
    const timer = setTimeout(() => end({ refused: 'late' }), limit.ms);
    const take = (chunk: Buffer) => {
      size += chunk.length;
      if (size > limit.bytes) end({ refused: 'large' });
      else chunks.push(chunk);
    };
    request
      .on('data', take)
      .once('end', () => end({ bytes: Buffer.concat(chunks) }))
      .once('error', () => end({ refused: 'gone' }))
      .once('close', () => end({ refused: 'gone' }));
  });
}

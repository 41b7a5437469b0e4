import type { ServerResponse } from 'node:http';

/** What a request gets back. */
export interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly headers?: Readonly<Record<string, string>>;
  /** Whether the connection is closed after it, since the rest of the request was not read. */
  readonly close?: boolean;
}

/** Nothing from elsewhere, nothing inline, in no frame. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** A value as JSON. */
export function json(status: number, value: unknown): Answer {
  return { status, type: 'application/json', body: JSON.stringify(value) };
}

/** A refusal, with a word that the page has a sentence for. */
export function refuse(status: number, why: string, close = false): Answer {
  return { ...json(status, { refused: why }), close };
}

/** Sends an answer with the headers that every answer has. */
export function send(response: ServerResponse, answer: Answer): void {
  if (response.headersSent || response.destroyed) return;
  response.writeHead(answer.status, {
    'Content-Type': answer.type,
    'Content-Length': Buffer.byteLength(answer.body),
    'Cache-Control': 'no-store',
    'Content-Security-Policy': POLICY,
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'X-Frame-Options': 'DENY',
    ...(answer.close ? { Connection: 'close' } : {}),
    ...answer.headers,
  });
  response.end(answer.body);
}

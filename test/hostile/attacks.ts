import { createRequire } from 'node:module';

/** Strings that have broken programs before, collected by many people: https://github.com/minimaxir/big-list-of-naughty-strings (MIT). */
const collected = createRequire(import.meta.url)('big-list-of-naughty-strings') as string[];

/** Strings meant for what this site writes: pages, attributes, scripts, style, drawings, feeds, tables, and its own templates. */
export const aimed: readonly string[] = [
  '"><script>alert(1)</script>',
  "'><script>alert(1)</script>",
  '</script><script>alert(1)</script>',
  '<!--<script>alert(1)',
  '</title><script>alert(1)</script>',
  '</style><script>alert(1)</script>',
  '</textarea><script>alert(1)</script>',
  '</svg><script>alert(1)</script>',
  '<svg/onload=alert(1)>',
  '<img src=x onerror=alert(1)>',
  '" onmouseover="alert(1)" x="',
  "' onfocus='alert(1)' autofocus='",
  '`onload=alert(1)',
  '<iframe srcdoc="<script>alert(1)</script>">',
  '<math><mi xlink:href="javascript:alert(1)">x',
  '<base href="https://elsewhere.example/">',
  '<meta http-equiv="refresh" content="0;url=https://elsewhere.example/">',
  '<link rel=stylesheet href=https://elsewhere.example/x.css>',
  '<a href="javascript:alert(1)">x</a>',
  'javascript:alert(1)',
  'data:text/html,<script>alert(1)</script>',
  '&lt;script&gt;alert(1)&lt;/script&gt;',
  '&#60;script&#62;alert(1)&#60;/script&#62;',
  '\\u003cscript\\u003ealert(1)\\u003c/script\\u003e',
  '%3Cscript%3Ealert(1)%3C/script%3E',
  ']]><script>alert(1)</script>',
  '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY y SYSTEM "file:///etc/passwd">]>&y;',
  '{row} {part} {contact} {0}',
  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is meant for whoever would fill it in
  '{{7*7}} ${7*7} <%= 7*7 %> #{7*7}',
  "$& $1 $` $' $$",
  '<slot /><set:html>',
  'x"; alert(1); var y="',
  '__proto__',
  '),=cmd|"/C calc"!A0',
  'a\u2028b\u2029c',
  '\u202eevil\u202c',
];

/** All strings that a text field takes; one that a spreadsheet would run is put behind a word. */
export const attacks: readonly string[] = [...aimed, ...collected].flatMap((text) => {
  // Control characters are refused wherever they stand.
  const plain = text.replace(/(?![\t\n])\p{Cc}|\p{Cs}/gu, '').trim();
  if (plain === '') return [];
  return [/^[=+\-@＝＋－＠]/.test(plain) ? `So ${plain}` : plain];
});

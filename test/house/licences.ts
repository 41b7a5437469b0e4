/** Licences that leave whoever uses, changes or passes on the project free to do so, by their SPDX names, with why where it isn't plain. */
export const FREE: Readonly<Record<string, string>> = {
  MIT: '',
  ISC: '',
  '0BSD': '',
  'BSD-2-Clause': '',
  'BSD-3-Clause': '',
  'Apache-2.0': '',
  'BlueOak-1.0.0': '',
  'CC0-1.0': 'the public domain',
  'Python-2.0': 'permissive; one file of argparse was taken over from Python',
  'MPL-2.0': 'asks only for changes to its own files, and we change none',
  'LGPL-3.0-or-later': 'libvips is a shared library beside sharp, which anyone may replace',
  'OFL-1.1': 'free to use and embed; only the typeface by itself may not be sold',
  'CC-BY-4.0': 'data on browsers, used while testing; the package names its authors',
  'MIT/X11': 'an old name of MIT',
};

/** Packages whose description names no licence, with what their licence file says. */
export const READ_BY_HAND: Readonly<Record<string, string>> = {
  exif: 'MIT',
};

/** What is not free in a licence expression; empty where it is. `OR` leaves the choice to us, `AND` asks for all. */
export function notFree(expression: string): string[] {
  const ways = expression.replace(/[()]/g, '').split(' OR ');
  const lacking = ways.map((way) => way.split(' AND ').filter((name) => !(name in FREE)));
  return lacking.reduce((least, names) => (names.length < least.length ? names : least));
}

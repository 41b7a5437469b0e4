import { type HazardWords, wholeWords } from './kinds.ts';

/** What tells of a danger in English. Work is looked for, not the mere thing: a text about a brake light is no brake work. */
export const en: HazardWords = {
  fuel: wholeWords(
    'petrol',
    'gasoline',
    'fuel (?:tank|line|pump|hose|tap)s?',
    'drain(?:ed|ing) the tank',
  ),
  lifting: wholeWords(
    'jack(?:ed|ing)(?: it)? up',
    'axle stands?',
    'on (?:two |four |its )?(?:stands|jacks)',
    'engine (?:crane|hoist)',
    'hoist(?:ed|ing)?',
    'chain block',
  ),
  welding: wholeWords('weld', 'welded', 'welding', 'plug welds?', 'MIG', 'TIG', 'oxy-?acetylene'),
  blasting: wholeWords(
    '(?:sand|shot|grit|bead|soda)-?blast(?:ed|ing|er)?',
    'blast(?:ed|ing) cabinet',
  ),
  spray: wholeWords(
    'spray(?:ed|ing)',
    'spray gun',
    'two-(?:part|pack) (?:paint|primer|top coats?)',
    'isocyanates?',
  ),
  brakes: wholeWords(
    'brake (?:drum|shoe|lining|pad|hose|pipe|line|cylinder|fluid|dust)s?',
    'master cylinder',
  ),
  springs: wholeWords(
    '(?:leaf|coil|valve|clutch) springs?',
    'spring (?:compressor|eye)s?',
    'torsion bars?',
  ),
  asbestos: wholeWords('asbestos'),
  lead: wholeWords(
    'lead (?:paint|primer|solder|loading|dust|wipe[sd]?|filler)',
    'lead-(?:based|loaded|filled)',
    'red lead',
    'white lead',
    'body solder',
    '(?:old|the) paint (?:has|holds|contains) lead',
  ),
  'high-voltage': wholeWords(
    'high voltage',
    'mains',
    'traction battery',
    '(?:230|240|400|415) ?V',
    'capacitors?',
  ),
};

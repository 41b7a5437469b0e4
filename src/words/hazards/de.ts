import { type HazardWords, wholeWords } from './kinds.ts';

/** What tells of a danger in German, whose words grow together. */
export const de: HazardWords = {
  fuel: wholeWords('benzin\\p{L}*', 'kraftstoff\\p{L}*', '(?:\\p{L}+)?tank (?:abgelassen|geleert)'),
  lifting: wholeWords(
    'aufgebockt\\p{L}*',
    'unterstellb[oö]ck\\p{L}*',
    'wagenheber\\p{L}*',
    'kettenzug',
    'motorkran',
    'hebebühne',
  ),
  welding: wholeWords(
    'schweiß\\p{L}*',
    'geschweißt\\p{L}*',
    '(?:ein|an|ver)geschweißt\\p{L}*',
    '\\p{L}+schweißung(?:en)?',
  ),
  blasting: wholeWords(
    'sandstrahl\\p{L}*',
    '(?:sand)?gestrahlt\\p{L}*',
    'strahlkabine',
    'strahlgut',
  ),
  spray: wholeWords(
    'lackiert\\p{L}*',
    'spritzpistole',
    'zweikomponenten\\p{L}*',
    '2K-\\p{L}+',
    'isocyanat\\p{L}*',
  ),
  brakes: wholeWords(
    'brems(?:trommel|backe|belag|beläge|schlauch|schläuche|leitung|zylinder|flüssigkeit|staub)\\p{L}*',
    'hauptbremszylinder',
  ),
  springs: wholeWords(
    '(?:blatt|schrauben|ventil|kupplungs)feder(?:n)?',
    'federspanner',
    'drehstab(?:feder)?',
  ),
  asbestos: wholeWords('asbest\\p{L}*'),
  lead: wholeWords(
    'bleifarbe\\p{L}*',
    'bleihaltig\\p{L}*',
    'bleimennige',
    'mennige',
    'bleilot',
    'verzinnt mit blei',
    'bleistaub',
  ),
  'high-voltage': wholeWords(
    'hochvolt\\p{L}*',
    'hochspannung\\p{L}*',
    'netzspannung',
    'netzstrom',
    '(?:230|240|400) ?V',
    'kondensator(?:en|s)?',
  ),
};

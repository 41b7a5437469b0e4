import { de } from '../words/hazards/de.ts';
import { en } from '../words/hazards/en.ts';
import { type HazardKind, type HazardWords, hazardKinds } from '../words/hazards/kinds.ts';

const languages: Readonly<Record<string, HazardWords>> = { en, de };

/** A danger that a text tells of, and the words that do. */
export interface SuggestedHazard {
  readonly kind: HazardKind;
  readonly words: string;
}

/** Dangers that the words of a text tell of and that no note in it speaks about; a language without a list suggests none. */
export function suggestedHazards(
  text: string,
  notes: readonly string[],
  language: string,
): readonly SuggestedHazard[] {
  const patterns = languages[language.toLowerCase().split('-')[0] ?? ''];
  if (patterns === undefined) return [];
  const warned = notes.join('\n');
  return hazardKinds.flatMap((kind) => {
    const words = patterns[kind].exec(text)?.[0];
    return words === undefined || covers(warned, kind, patterns) ? [] : [{ kind, words }];
  });
}

/** A note that names the matter at all is enough: what it says of it is the builder's. */
const NAMED: Readonly<Record<HazardKind, RegExp>> = {
  fuel: /fuel|petrol|benzin|kraftstoff/i,
  lifting: /\blift|raised|stands?\b|jack|hoist|bock|gehoben|heber/i,
  welding: /weld|schwei[sß]/i,
  blasting: /blast|strahl/i,
  spray: /spray|hardener|isocyan|solvent|lack|härter|lösemittel/i,
  brakes: /brake|brems/i,
  springs: /spring|feder/i,
  asbestos: /asbest/i,
  lead: /\blead\b|blei|mennige/i,
  'high-voltage': /voltage|mains|electric|spannung|strom|elektr/i,
};

function covers(notes: string, kind: HazardKind, patterns: HazardWords): boolean {
  return NAMED[kind].test(notes) || patterns[kind].test(notes);
}

/** The first choice of units, from what the browser says about its reader. */
import type { UnitSystem } from './kinds.ts';

/** Regions whose everyday lengths are inches (Unicode CLDR, measurement systems; from memory). */
const inchRegions = new Set(['US', 'LR', 'MM']);

function readTag(tag: string): Intl.Locale | undefined {
  try {
    return new Intl.Locale(tag);
  } catch {
    return undefined; // a damaged tag says nothing about its reader
  }
}

/**
 * Inches for a reader in the United States, Liberia or Myanmar, else mm.
 * The first language decides; further ones only add its region, because a German browser lists
 * `de, en-US, en`. English without any region is mm, Burmese is Myanmar's.
 * @param languages as in `navigator.languages`; damaged tags are passed over.
 */
export function systemFromLocale(languages: readonly string[]): UnitSystem {
  const tags = languages.map(readTag).filter((tag) => tag !== undefined);
  const language = tags[0]?.language;
  const region = tags.find((tag) => tag.language === language && tag.region)?.region;
  return inchRegions.has(region ?? (language === 'my' ? 'MM' : '')) ? 'inch' : 'mm';
}

/** The first choice of units, from what the browser says about its reader. */
import type { UnitSystem } from './kinds.ts';

/**
 * Inches for a reader in the United States, Liberia or Myanmar, else mm.
 * The first language decides; further ones only add its region, because a German browser lists
 * `de, en-US, en`. English without any region is mm, Burmese is Myanmar's.
 * Regions: Unicode CLDR, measurement systems; from memory.
 *
 * It uses nothing from outside itself, because `layouts/Base.astro` writes its text into every page, to run before
 * the first paint.
 * @param languages as in `navigator.languages`; damaged tags are passed over.
 */
export function systemFromLocale(languages: readonly string[]): UnitSystem {
  const tags = languages.flatMap((tag) => {
    try {
      return [new Intl.Locale(tag)];
    } catch {
      return []; // a damaged tag says nothing about its reader
    }
  });
  const language = tags[0]?.language;
  const region = tags.find((tag) => tag.language === language && tag.region)?.region;
  return ['US', 'LR', 'MM'].includes(region ?? (language === 'my' ? 'MM' : '')) ? 'inch' : 'mm';
}

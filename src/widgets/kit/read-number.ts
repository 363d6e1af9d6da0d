/** Reading what a reader typed; the reading is fetched with the first text, since most readers move sliders only. */
import type { Kind, Parsed, UnitSystem } from '../../units/index.ts';

/** Said where a part of the page could not be fetched; what the reader wrote stays in its field. */
const notFetched =
  'A part of this page could not be fetched. Your text stays here: try again when there is a network, or reload the page.';

export async function readNumber(text: string, kind: Kind, system: UnitSystem): Promise<Parsed> {
  try {
    const { parse } = await import('../../units/parse-late.ts');
    return parse(text, kind, system);
  } catch {
    return { ok: false, message: notFetched };
  }
}

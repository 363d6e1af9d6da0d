/** Reading what a reader typed; the reading is fetched with the first text, since most readers move sliders only. */
import type { Kind, Parsed, UnitSystem } from '../units/index.ts';

export async function readNumber(text: string, kind: Kind, system: UnitSystem): Promise<Parsed> {
  const { parse } = await import('../units/parse.ts');
  return parse(text, kind, system);
}

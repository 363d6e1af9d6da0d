/** Works out what mends each warning, one after another: in the worker what takes a search. */
import { mendRefusal } from '../../box/design/mend-refusal.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { Overtaken, reckon } from '../../notebook/reckoner/reckon.ts';
import type { Ruler } from '../../units/index.ts';
import type { Mend } from './mend.ts';
import type { Warning } from './warnings.ts';

/** By the id of the warning, the smallest first; missing where they are not known yet. */
export type Mends = ReadonlyMap<string, readonly Mend[]>;

async function mendsOf(box: Box, warning: Warning, ruler: Ruler): Promise<readonly Mend[]> {
  if ('verdict' in warning) return reckon({ ask: 'changes', of: warning.id, box, ruler: ruler.name });
  return [mendRefusal(box, warning.refusal, ruler) ?? []].flat();
}

/**
 * What cannot be worked out, since the worker could not be fetched, is left out: the controls say so.
 * @returns stops the search
 */
export function findMends(
  box: Box,
  warnings: readonly Warning[],
  ruler: Ruler,
  onFound: (mends: Mends) => void,
): () => void {
  let wanted = true;
  const all = warnings.map(async (warning) => {
    try {
      return [[warning.id, await mendsOf(box, warning, ruler)]] as const;
    } catch (why) {
      if (why instanceof Overtaken) wanted = false;
      return [];
    }
  });
  void Promise.all(all).then((found) => {
    if (wanted) onFound(new Map(found.flat()));
  });
  return () => {
    wanted = false;
  };
}

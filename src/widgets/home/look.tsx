/** A box as a small drawing, and what the rules make of it in a few words. Fetched for readers who have a box of their own. */
import { designBox } from '../../box/design/design.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { verdicts } from '../../box/whole/index.ts';
import { SmallBox } from '../../figures/box/SmallBox.tsx';
import { inWords } from '../kit/in-words.ts';
import { countOf, judgedOf } from '../my-box/warnings.ts';
import type { Look } from './OwnBox.tsx';

/** The bench of my box counts the same. */
export function lookAt(box: Box): Look {
  const design = designBox(box);
  const { breaks, looks } = countOf(
    judgedOf(verdicts(design.values), design.refusals, box.accepted).warnings,
  );
  const things = looks === 1 ? 'thing' : 'things';
  const says =
    design.refusals.length > 0
      ? 'it cannot be built yet'
      : [breaks > 0 && `${inWords(breaks)} broken`, looks > 0 && `${inWords(looks)} ${things} to look at`]
          .filter(Boolean)
          .join(', ') || 'every rule is kept';
  return { picture: <SmallBox design={design} />, says };
}

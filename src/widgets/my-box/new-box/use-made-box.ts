/** The box that the answers make, worked out beside the page: the one before stays in sight until the next is there. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { NewBoxAnswers } from '../../../box/design/new-box.ts';
import { exampleFor } from '../../../box/subjects/example.ts';
import type { Box } from '../../../box/subjects/inputs.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { Overtaken, reckon } from '../../../notebook/reckoner/reckon.ts';
import type { Ruler } from '../../../units/index.ts';

interface Made {
  readonly box?: Box;
  /** Why there is none for the present answers. */
  readonly refused?: string;
  /** The answers it was made from. */
  readonly key?: string;
}

export function useMadeBox(answers: NewBoxAnswers, ruler: Ruler) {
  const made = useSignal<Made>({});
  const key = JSON.stringify([answers, ruler.name]);
  useEffect(() => {
    let wanted = true;
    reckon({ ask: 'new-box', of: answers, box: exampleFor(ruler.system), ruler: ruler.name }).then(
      (found) => {
        if (!wanted) return;
        made.value = isRefused(found) ? { key, refused: found.refused } : { key, box: found };
      },
      (why: Error) => {
        if (wanted && !(why instanceof Overtaken)) made.value = { key, refused: why.message };
      },
    );
    return () => {
      wanted = false;
    };
  }, [key]);
  return { ...made.value, isNow: made.value.key === key };
}

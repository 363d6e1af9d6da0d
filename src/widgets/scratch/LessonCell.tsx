/**
 * The cell at the end of a lesson. It begins with a sum of that lesson, for the reader's box. Once it is changed it is one
 * of the reader's cells, behind the others: names given in those hold here, and it is found again on their page.
 */
import { useSignal } from '@preact/signals';
import { useEffect, useId, useLayoutEffect, useRef } from 'preact/hooks';
import type { KeptCell } from '../../notebook/scratch/kept.ts';
import { cellOfLesson, keepDraftAtLesson, scratchSays, writeAtLesson } from '../../notebook/scratch/kept.ts';
import { units } from '../../notebook/units.ts';
import style from '../../styles/scratch-cell.css?inline';
import { addStyle } from '../kit/add-style.ts';
import { useLead } from '../kit/use-lead.ts';
import { SumField } from './SumField.tsx';
import { Result, signatureOf } from './said.tsx';
import { useScratch } from './use-scratch.ts';

export interface AtLesson {
  /** Its address, and the sum it begins with. */
  lesson: string;
  first: string;
}

/** Of the cell that is not kept yet. */
const unkept = -1;

export function LessonCell({ lesson, first }: AtLesson) {
  const says = useId();
  const live = useSignal(false);
  const asIs = (): KeptCell | undefined =>
    cellOfLesson(lesson) ? undefined : { id: unkept, cell: { type: 'sum', text: first } };
  const work = useScratch(asIs);
  // The looks of a cell, which a lesson has no use for before.
  useLayoutEffect(() => addStyle(style), []);
  useEffect(() => {
    live.value = true;
    // It wakes when it is touched.
    work.use();
  }, []);
  const lead = useLead();
  const box = useRef<HTMLDivElement>(null);
  const kept = live.value ? cellOfLesson(lesson) : undefined;
  const text = kept?.cell.text ?? first;
  const result = work.results.value.get(kept?.id ?? unkept);
  return (
    <div class="cell" ref={box}>
      {scratchSays.value && (
        <p class="notice" role="alert">
          {scratchSays.value}
        </p>
      )}
      {work.missing.value && (
        <p class="notice" role="alert">
          What works this out could not be fetched. Your text stays here: press Enter in it when there is a
          network, or reload the page.
        </p>
      )}
      <SumField
        id={`${says}f`}
        label="a sum of this lesson"
        describedBy={says}
        value={text}
        wrong={result?.type === 'trouble'}
        offers={work.offers.value}
        set={(written) => writeAtLesson(lesson, written)}
        draft={(written) => keepDraftAtLesson(lesson, written)}
        use={work.use}
        enter={work.use}
        hint={(asked) =>
          signatureOf(work.names.value.find(({ name }) => name.toLowerCase() === asked.toLowerCase()))
        }
      />
      <p id={says} role="status" class="cell-result">
        <Result result={result} system={live.value ? units.value : 'mm'} />
      </p>
      <p class="buttons">
        <button type="button" onClick={work.use}>
          work it out
        </button>{' '}
        {text !== first && (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              lead(() => box.current?.querySelector('input'));
              writeAtLesson(lesson, first);
            }}
          >
            the first sum again
          </button>
        )}
      </p>
    </div>
  );
}

/**
 * The sheets as pages of paper. All blocks are drawn once where nobody sees them, to learn how high they are on this paper;
 * then each page is filled as far as it goes, so that nothing is broken and every page knows how many there are.
 */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { addStyle } from '../../kit/add-style.ts';
import { KeyHead, KeySheet } from './KeySheet.tsx';
import { SheetHead, SheetTaskBlock } from './LearnerSheet.tsx';
import type { Made, Sheet } from './make.ts';
import { type KeyHeights, type KeyPiece, margin, packBlocks, packKeys, pageSize, roomOn } from './paper.ts';

interface Plan {
  /** Of each learner: which blocks stand on which page; 0 is the head. */
  readonly sheets: readonly (readonly (readonly number[])[])[];
  readonly keys: readonly (readonly KeyPiece[])[];
}

const heightOf = (element: Element) => element.getBoundingClientRect().height;
const heightsIn = (within: Element, selector: string) => [...within.querySelectorAll(selector)].map(heightOf);

/** The heights of a drawn table. What lies between its parts is counted with the title. */
function keyHeights(drawn: Element): KeyHeights {
  const rows = heightsIn(drawn, 'tbody tr');
  const notes = heightsIn(drawn, '.key-notes p');
  const [columns = 0] = heightsIn(drawn, 'thead');
  const inside = [...rows, ...notes, columns].reduce((all, one) => all + one, 0);
  return { head: heightOf(drawn) - inside, columns, rows, notes };
}

function planOf(drawn: Element, { paper }: Made['choices']): Plan {
  const room = roomOn(paper);
  const tables = [...drawn.querySelectorAll('[data-keys]')].map(keyHeights);
  const [head = 0] = heightsIn(drawn, '[data-key-head] [data-block]');
  return {
    sheets: [...drawn.querySelectorAll('[data-sheet]')].map((sheet) =>
      packBlocks(heightsIn(sheet, '[data-block]'), room),
    ),
    keys: tables.length > 0 ? packKeys(tables, room, head) : [],
  };
}

const Page = ({ of, count, children }: { of: string; count: string; children: ComponentChildren }) => (
  <section class="paper-page" aria-label={`${of}, ${count}`}>
    <div>{children}</div>
    <p class="sheet-foot">
      <span>{of}</span> <span>{count}</span>
    </p>
  </section>
);

export function Printed({ made, done }: { made: Made; done: (pages: number) => void }) {
  const { sheets, keys, choices } = made;
  const drawn = useRef<HTMLDivElement>(null);
  const plan = useSignal<Plan | undefined>(undefined);
  const withSheets = choices.print !== 'keys';
  const withKeys = choices.print !== 'sheets';
  useLayoutEffect(() => {
    if (drawn.current) plan.value = planOf(drawn.current, choices);
    else if (plan.value) done(plan.value.sheets.flat().length + plan.value.keys.length);
  }, [plan.value]);
  const block = (sheet: Sheet, at: number, measured = false) =>
    at === 0 ? (
      <SheetHead made={made} sheet={sheet} />
    ) : (
      <SheetTaskBlock sheet={sheet} at={at - 1} measured={measured} />
    );
  useLayoutEffect(
    () =>
      addStyle(`@page { size: ${choices.paper === 'A4' ? 'A4' : 'letter'} portrait; margin: ${margin}mm; }`),
    [choices.paper],
  );
  const { width, height } = pageSize(choices.paper);
  const found = plan.value;
  const keyHead = <KeyHead className={choices.className} learners={choices.learners} />;
  const name = ({ className, number }: { className: string; number: number }) =>
    `Class ${className} · number ${number}`;
  return (
    <div class="sheets-made" style={{ '--page-width': `${width}mm`, '--page-height': `${height}mm` }}>
      {!found && (
        <div class="sheets-drawn" ref={drawn} aria-hidden="true">
          {withSheets &&
            sheets.map((sheet) => (
              <div key={sheet.learner.number} data-sheet>
                {block(sheet, 0)}
                {sheet.tasks.map((_, at) => block(sheet, at + 1, true))}
              </div>
            ))}
          {withKeys && (
            <>
              <div data-key-head>{keyHead}</div>
              {keys.map((table) => (
                <KeySheet key={table.exercise} table={table} />
              ))}
            </>
          )}
        </div>
      )}
      {found?.sheets.map((pages, place) => {
        const sheet = sheets[place]!;
        return pages.map((blocks, page) => (
          <Page key={`${place} ${page}`} of={name(sheet.learner)} count={`${page + 1} of ${pages.length}`}>
            {blocks.map((at) => block(sheet, at))}
          </Page>
        ));
      })}
      {found?.keys.map((pieces, page) => (
        <Page
          key={`keys ${page}`}
          of={`Class ${choices.className} · keys`}
          count={`${page + 1} of ${found.keys.length}`}
        >
          {page === 0 && keyHead}
          {pieces.map((piece) => (
            <KeySheet key={piece.at} table={keys[piece.at]!} piece={piece} />
          ))}
        </Page>
      ))}
    </div>
  );
}

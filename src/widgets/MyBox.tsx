/** The reader's box: what goes in, every decision, the drawings, what each rule says, the cut list, designs and files. */
import { useComputed, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Box } from '../box/box.ts';
import { verdicts } from '../box/checks/index.ts';
import { designBox } from '../box/design.ts';
import { wholeModel } from '../box/evaluate.ts';
import { cutListCsv, fileNameOf } from '../notebook/files.ts';
import { useStore } from '../notebook/use-store.ts';
import { Control } from './Control.tsx';
import { Accuracy } from './my-box/Accuracy.tsx';
import { Board } from './my-box/Board.tsx';
import { Compare } from './my-box/Compare.tsx';
import { type CatalogItem, Contents } from './my-box/Contents.tsx';
import { Designs } from './my-box/Designs.tsx';
import { Drawings } from './my-box/Drawings.tsx';
import { download } from './my-box/download.ts';
import { PartsTable } from './my-box/PartsTable.tsx';
import { Refusals } from './my-box/Refusals.tsx';
import { SaveDrawings } from './my-box/SaveDrawings.tsx';
import { inputsFor, type Section, sections } from './my-box/sections.ts';
import { VerdictActions } from './my-box/VerdictActions.tsx';
import { VerdictLine } from './VerdictLine.tsx';

const root = import.meta.env.BASE_URL.replace(/\/?$/, '/');

/** The worst first, so that a reader on a phone sees it without scrolling. */
const order = { breaks: 0, unusual: 1, usual: 2 };

export default function MyBox({ catalog }: { catalog: readonly CatalogItem[] }) {
  const store = useStore(wholeModel);
  const other = useSignal<Box | undefined>(undefined);
  const drawings = useRef<HTMLDivElement>(null);
  const design = useComputed(() => designBox(store.values.value));
  const v = store.values.value;
  const judged = verdicts(v).sort((a, b) => order[a.state] - order[b.state]);
  const count = (state: keyof typeof order) => judged.filter((verdict) => verdict.state === state).length;

  const fieldsOf = (section: Section) => (
    <div class="controls">
      {inputsFor(section, v).map((name) => (
        <Control key={name} name={name} store={store} />
      ))}
    </div>
  );

  return (
    <>
      <div class="workbench">
        <div class="decisions">
          <section>
            <h2>{sections.contents.title}</h2>
            <Contents store={store} catalog={catalog} />
            {fieldsOf(sections.contents)}
          </section>
          {(Object.keys(sections) as (keyof typeof sections)[])
            .filter((key) => key !== 'contents')
            .map((key) => (
              <section key={key}>
                <h2>{sections[key].title}</h2>
                {fieldsOf(sections[key])}
                {key === 'errors' && <Accuracy design={design.value} units={store.units.value} />}
                {key === 'board' && <Board design={design.value} />}
              </section>
            ))}
        </div>
        <div class="in-view" ref={drawings}>
          <Refusals refusals={design.value.refusals} store={store} />
          <Drawings design={design.value} />
          <SaveDrawings box={v} within={drawings} />
          <p class="says">
            {count('breaks')} rules broken, {count('unusual')} outside the usual range, {count('usual')}{' '}
            inside it.
          </p>
        </div>
      </div>
      <section>
        <h2>What the rules say</h2>
        <ul class="verdicts">
          {judged.map((verdict) => (
            <VerdictLine key={verdict.check.rule + verdict.check.label} verdict={verdict}>
              {verdict.state !== 'usual' && <VerdictActions verdict={verdict} store={store} />}
            </VerdictLine>
          ))}
        </ul>
      </section>
      <section>
        <h2>Cut list</h2>
        <PartsTable design={design.value} />
        <p>
          <button
            type="button"
            class="quiet"
            onClick={() => download(fileNameOf(v, 'csv'), 'text/csv', cutListCsv(design.value))}
          >
            save the cut list as CSV
          </button>
        </p>
      </section>
      <section>
        <h2>On paper</h2>
        <p>
          <a href={`${root}build-sheet/`}>The build sheet</a>: drawings, cut list, set-ups, gaps, order of
          work with its checks and cautions, for A4 or US Letter.
        </p>
        <p>
          <a href={`${root}templates/`}>Paper templates</a>: joints and grooves of every wall at full size.
        </p>
      </section>
      {other.value && (
        <Compare
          mine={design.value}
          other={other.value}
          onClose={() => {
            other.value = undefined;
          }}
        />
      )}
      <Designs
        onCompare={(box) => {
          other.value = box;
        }}
      />
    </>
  );
}

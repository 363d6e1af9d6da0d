/** The reader's box: what goes in, every decision, the drawings, what each rule says, the cut list, designs and files. */

import { useComputed, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { designOf } from '../../box/design/design.ts';
import { wholeModel } from '../../box/subjects/index.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { cutListCsv, fileNameOf } from '../../notebook/files.ts';
import { useFollower } from '../kit/follow.ts';
import { href } from '../kit/href.ts';
import { useStore } from '../kit/use-store.ts';
import { Accuracy } from './Accuracy.tsx';
import { AllNumbers } from './AllNumbers.tsx';
import { Board } from './Board.tsx';
import { ByRatio } from './ByRatio.tsx';
import { Compare } from './Compare.tsx';
import { type CatalogItem, Contents } from './Contents.tsx';
import { Decisions } from './Decisions.tsx';
import { Designs } from './Designs.tsx';
import { Drawings } from './Drawings.tsx';
import { download } from './download.ts';
import { PartsTable } from './PartsTable.tsx';
import { Refusals } from './Refusals.tsx';
import { SaveDrawings } from './SaveDrawings.tsx';
import { sections } from './sections.ts';
import { VerdictCount, Verdicts } from './Verdicts.tsx';

export default function MyBox({ catalog }: { catalog: readonly CatalogItem[] }) {
  const store = useStore(wholeModel);
  const other = useSignal<Box | undefined>(undefined);
  const drawings = useRef<HTMLDivElement>(null);
  const shown = useFollower(store.values);
  const design = useComputed(() => designOf(shown.value));

  return (
    <>
      <div class="workbench">
        <div class="decisions">
          <section>
            <h2>{sections.contents.title}</h2>
            <Contents store={store} shown={shown} catalog={catalog} />
            <Decisions section={sections.contents} store={store} />
          </section>
          {(Object.keys(sections) as (keyof typeof sections)[])
            .filter((key) => key !== 'contents')
            .map((key) => (
              <section key={key}>
                <h2>{sections[key].title}</h2>
                <Decisions section={sections[key]} store={store} />
                {key === 'size' && <ByRatio store={store} />}
                {key === 'errors' && <Accuracy design={design.value} units={store.units.value} />}
                {key === 'board' && <Board design={design.value} />}
              </section>
            ))}
        </div>
        <div class="in-view" ref={drawings}>
          <Refusals refusals={design.value.refusals} store={store} />
          <Drawings design={design.value} />
          <SaveDrawings box={design.value.box} within={drawings} />
          <VerdictCount design={design.value} />
        </div>
      </div>
      <section>
        <h2>What the rules say</h2>
        <Verdicts design={design.value} store={store} />
      </section>
      <section>
        <h2>The numbers behind it</h2>
        <AllNumbers store={store} />
      </section>
      <section>
        <h2>Cut list</h2>
        <PartsTable design={design.value} />
        <p>
          <button
            type="button"
            class="quiet"
            onClick={() =>
              download(fileNameOf(design.value.box, 'csv'), 'text/csv', cutListCsv(design.value))
            }
          >
            save the cut list as CSV
          </button>
        </p>
      </section>
      <section>
        <h2>On paper</h2>
        <p>
          <a href={href('build-sheet/')}>The build sheet</a>: drawings, cut list, set-ups, gaps, order of work
          with its checks and cautions, for A4 or US Letter.
        </p>
        <p>
          <a href={href('templates/')}>Paper templates</a>: joints and grooves of every wall at full size.
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

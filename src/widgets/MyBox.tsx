/** The reader's box: what goes in, every decision, the drawings, what each rule says, the cut list, designs and files. */
import { useComputed, useSignal } from '@preact/signals';
import type { Box } from '../box/box.ts';
import { verdicts } from '../box/checks/index.ts';
import { designBox } from '../box/design.ts';
import { wholeModel } from '../box/evaluate.ts';
import { cutListCsv, fileNameOf } from '../notebook/files.ts';
import { useStore } from '../notebook/use-store.ts';
import { Control } from './Control.tsx';
import { type CatalogItem, Contents } from './my-box/Contents.tsx';
import { Designs } from './my-box/Designs.tsx';
import { Drawings } from './my-box/Drawings.tsx';
import { download } from './my-box/download.ts';
import { PartsTable } from './my-box/PartsTable.tsx';
import { Refusals } from './my-box/Refusals.tsx';
import { inputsFor, type Section, sections } from './my-box/sections.ts';
import { VerdictActions } from './my-box/VerdictActions.tsx';
import { VerdictLine } from './VerdictLine.tsx';

/** The worst first, so that a reader on a phone sees it without scrolling. */
const order = { breaks: 0, unusual: 1, usual: 2 };

export default function MyBox({ catalog }: { catalog: readonly CatalogItem[] }) {
  const store = useStore(wholeModel);
  const other = useSignal<Box | undefined>(undefined);
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
              </section>
            ))}
        </div>
        <div class="in-view">
          <Refusals refusals={design.value.refusals} store={store} />
          <Drawings design={design.value} />
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
      <Designs
        onCompare={(box) => {
          other.value = box;
        }}
      />
    </>
  );
}

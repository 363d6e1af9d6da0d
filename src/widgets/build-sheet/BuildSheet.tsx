/** The build sheet of the current box: what a maker takes to the bench, on paper. */

import { useComputed } from '@preact/signals';
import { designOf } from '../../box/design/design.ts';
import { fields } from '../../box/subjects/inputs.ts';
import { wholeModel } from '../../box/whole/index.ts';
import { isPlanned, workOf } from '../../box/work/work.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Sizes } from '../../figures/parts/Sizes.tsx';
import { Isometric } from '../../figures/views/Isometric.tsx';
import { Views } from '../../figures/views/Views.tsx';
import { href } from '../kit/href.ts';
import { useStore } from '../kit/use-store.ts';
import { Board } from '../my-box/Board.tsx';
import { PartsTable } from '../my-box/PartsTable.tsx';
import { AsBuilt } from './AsBuilt.tsx';
import { Exceptions } from './Exceptions.tsx';
import { LinkAtEnd, LinkCode } from './LinkCode.tsx';
import { NameOnSheet } from './NameOnSheet.tsx';
import type { SourceNames } from './StepCard.tsx';
import { Steps } from './Steps.tsx';
import { Amounts, GapTable, SetUps } from './WorkTables.tsx';

export default function BuildSheet({ sources }: { sources: SourceNames }) {
  const store = useStore(wholeModel);
  const design = useComputed(() => designOf(store.values.value));
  const work = useComputed(() => workOf(design.value));
  const { values: v, refusals, inside, insideVolume, mass } = design.value;
  const made = work.value;
  return (
    <article class="build-sheet">
      <p class="screen-only buttons">
        <button type="button" onClick={() => window.print()}>
          print this sheet
        </button>{' '}
        <a href={href('my-box/')}>change the box</a>{' '}
        <a href={href('templates/')}>paper templates, full size</a>
      </p>
      <header>
        <h1>{v.name}</h1>
        {v.items.length > 0 && (
          <p>
            For {v.items.map(({ name, count }) => `${count} × ${name}`).join(', ')}, together{' '}
            <Sizes of={[v.contentsLength, v.contentsWidth, v.contentsHeight]} asTyped />.
          </p>
        )}
        <p class="paper-only">
          Made by <span class="blank wide" /> for <span class="blank wide" /> Date <span class="blank" />
        </p>
        <NameOnSheet store={store} />
        <p>
          Outside <Sizes of={[v.outsideLength, v.outsideWidth, v.outsideHeight]} />
          {inside && (
            <>
              ; inside <Sizes of={[inside.length, inside.width, inside.height]} />
            </>
          )}
          {insideVolume !== undefined && (
            <>
              , <Quantity value={insideVolume} kind="volume" digits={0} />
            </>
          )}
          . Kind: {fields.kind.options[v.kind]}. Corners: {fields.joint.options[v.joint]}. Wood:{' '}
          {fields.species.options[v.species]}
          {mass !== undefined && (
            <>
              , about <Quantity value={mass} kind="mass" digits={0} />
            </>
          )}
          .
        </p>
      </header>
      {refusals.length > 0 && (
        <section class="refusals">
          <h2>This cannot be built yet</h2>
          <ul>
            {refusals.map(({ id, what, fix }) => (
              <li key={id}>
                {what} {fix}
              </li>
            ))}
          </ul>
        </section>
      )}
      <section class="sheet-drawings" aria-label="Drawings and link">
        <div>
          {made && <Isometric design={design.value} />}
          <LinkCode />
        </div>
        {made && <Views design={design.value} />}
      </section>
      <section>
        <h2>Cut list</h2>
        <PartsTable design={design.value} />
      </section>
      {made && (
        <section class="sheet-board">
          <h2>The board</h2>
          <Board design={design.value} />
        </section>
      )}
      {made && isPlanned(design.value) && (
        <>
          <section>
            <h2>Set-ups</h2>
            <SetUps setUps={made.setUps} />
          </section>
          <section>
            <h2>Gaps</h2>
            <GapTable gaps={made.gaps} />
          </section>
          <section>
            <h2>Order of work</h2>
            <Steps design={design.value} stages={made.stages} steps={made.steps} names={sources} />
          </section>
          <section>
            <h2>Glue, finish and time</h2>
            <Amounts amounts={made.amounts} />
          </section>
        </>
      )}
      <section>
        <h2>What the rules say</h2>
        <Exceptions design={design.value} />
      </section>
      <LinkAtEnd />
      {made && refusals.length === 0 && <AsBuilt design={design.value} />}
    </article>
  );
}

/**
 * The reader's box on the bench: its drawing always in sight, the warnings, and the controls of one part at a time; the
 * cut list, the drawings and all numbers below.
 */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useId, useMemo, useRef } from 'preact/hooks';
import { type Design, designOf } from '../../box/design/design.ts';
import { isExample } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { wholeModel } from '../../box/whole/index.ts';
import { useFollower } from '../kit/follow.ts';
import { useStore } from '../kit/use-store.ts';
import { Below } from './Below.tsx';
import { newBench } from './bench-state.ts';
import { CheckState } from './CheckState.tsx';
import type { CatalogItem } from './Contents.tsx';
import { Drawer } from './Drawer.tsx';
import type { KnownMends } from './known-mends.ts';
import { fetchLate, onFirstTouch } from './Late.tsx';
import { OtherBox } from './OtherBox.tsx';
import { PartBar } from './PartBar.tsx';
import { PartPanel } from './PartPanel.tsx';
import { Plate } from './Plate.tsx';
import { Printed } from './Printed.tsx';
import type { PartOfBench } from './parts.ts';
import { type Drawer as DrawerName, Top } from './Top.tsx';
import type { KnownBands } from './use-bands.ts';
import { useHold } from './use-hold.ts';
import { useNarrow } from './use-narrow.ts';
import { usePart } from './use-part.ts';
import type { KnownPicture } from './use-picture.ts';
import { useWarnings } from './use-warnings.ts';
import { HeardState, Kept, OtherWarnings, Warnings } from './Warnings.tsx';
import { countsByPart } from './warnings.ts';

interface Props {
  catalog: readonly CatalogItem[];
  /** The part that a first visit begins with. */
  first: PartOfBench;
  known: KnownMends;
  bands: KnownBands;
  picture: KnownPicture;
}

/** So long after the page is awake nothing else is to be done, ms. */
const idle = 1500;

export default function MyBox({ catalog, first, known, bands, picture }: Props) {
  const store = useStore(wholeModel);
  const shown = useFollower(store.values);
  const design = useComputed(() => designOf(shown.value));
  /** The last box that could be drawn stays in sight. */
  const last = useRef<Design>();
  const drawn = useComputed(() => {
    const now = design.value;
    if (now.plan || !last.current) last.current = now;
    return last.current;
  });
  const bench = useMemo(() => newBench(first), []);
  const hold = useHold();
  const warnings = useWarnings(design, store.units, known, hold.take);
  const counts = useComputed(() => countsByPart(warnings.live.value.warnings));
  const narrow = useNarrow();
  /** On a phone: all warnings above the chosen part. */
  const all = useSignal(false);
  useEffect(() => {
    // Beside a wide plate the growth rings are seen; a phone fetches what is late with the first touch.
    const timer = setTimeout(() => narrow.peek() || fetchLate(), idle);
    return () => clearTimeout(timer);
  }, []);
  const drawer = useSignal<DrawerName | undefined>(undefined);
  const other = useSignal<Box | undefined>(undefined);
  const [drawerId, nameId] = [useId(), useId()];
  const part = bench.part.value;
  const { workbench, beside, heading, choose, leadToPlate } = usePart(bench, {
    isNarrow: () => narrow.peek(),
    // A box of the reader's own begins where it needs them most.
    begin: () => (isExample(store.values.peek()) ? undefined : warnings.live.peek().warnings[0]?.part),
  });
  const onPart = (chosen: PartOfBench) => {
    all.value = false;
    choose(chosen);
  };

  return (
    <div class="bench" {...onFirstTouch}>
      <Top store={store} open={drawer} drawer={drawerId} nameId={nameId} />
      <Drawer
        id={drawerId}
        open={drawer}
        store={store}
        catalog={catalog}
        onName={() => document.getElementById(nameId)?.focus()}
        onCompare={(box) => {
          other.value = box;
        }}
      />
      <OtherBox mine={design} other={other} />
      <div class="workbench" ref={workbench}>
        <Plate bench={bench} design={drawn} counts={counts} known={picture} onPart={onPart}>
          <CheckState
            of={warnings.live}
            bench={bench}
            open={all.value}
            onAll={() => {
              all.value = !all.value;
              leadToPlate();
            }}
          />
        </Plate>
        <div class="beside" ref={beside} onPointerDown={hold.touch} onFocusIn={hold.touch}>
          <HeardState of={warnings} />
          <Warnings
            of={warnings}
            part={part}
            store={store}
            onDrawn={hold.release}
            onPart={onPart}
            others={!narrow.value ? 'beside the plate' : all.value ? 'asked for' : 'none'}
          />
          {!narrow.value && <Kept class="other" of={warnings} store={store} />}
          <PartPanel
            key={part}
            part={part}
            store={store}
            design={design}
            shown={shown}
            catalog={catalog}
            heading={heading}
            known={bands}
          />
          {narrow.value && (
            <>
              {!all.value && <OtherWarnings of={warnings} part={part} store={store} onPart={onPart} />}
              <Kept of={warnings} store={store} />
            </>
          )}
        </div>
      </div>
      <Printed values={shown} />
      <Below design={design} store={store} />
      <PartBar part={part} shown={shown} counts={counts} onPart={onPart} />
    </div>
  );
}

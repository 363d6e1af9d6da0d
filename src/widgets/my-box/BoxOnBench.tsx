/**
 * The box that can be turned and touched, and the names of the parts with lines to them. The names are the way for keys;
 * on the drawing the arrow keys turn and tip it.
 */
import type { ReadonlySignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { BenchBox } from '../../figures/box/BenchBox.tsx';
import { Leaders } from '../../figures/box/Leaders.tsx';
import { labelPlaces, spotsOnScreen } from '../../figures/box/label-places.ts';
import { type PartOfBox, partsOfBox } from '../../figures/box/parts-of-box.ts';
import { sideOfBox } from '../../figures/box/side-of-box.ts';
import type { Count } from '../verdicts/Mark.tsx';
import { asBuilt } from './as-built.ts';
import type { Bench } from './bench-state.ts';
import { PartNames } from './PartNames.tsx';
import type { PartOfBench } from './parts.ts';
import type { DrawnPicture, KnownPicture } from './use-picture.ts';
import { useRings } from './use-rings.ts';
import { useSize } from './use-size.ts';
import { useTouch } from './use-touch.ts';

interface Props {
  bench: Bench;
  design: ReadonlySignal<Design>;
  counts: ReadonlySignal<(part: PartOfBench) => Count>;
  /** As the page was built. */
  known: KnownPicture;
  drawing: DrawnPicture;
  onPart: (part: PartOfBench) => void;
}

/** What the drawing is as large as while a page is built. */
const atFirst = { width: 780, height: 380 };
/** Room for names at each side, less where the plate is narrow, and above: px. */
const besideOf = (width: number) => (width < 640 ? 126 : 170);
const above = 10;

const isOfBox = (part: PartOfBench): part is PartOfBox =>
  (partsOfBox as readonly PartOfBench[]).includes(part);

export function BoxOnBench({ bench, design, counts, known, drawing: { picture, isDrawn }, onPart }: Props) {
  const { ref, size } = useSize(atFirst);
  const part = bench.part.value;
  const chosen = isOfBox(part) ? part : undefined;
  const now = isDrawn.value ? picture.value : undefined;
  const touch = useTouch(bench, picture, onPart);
  const ringsOn = useRings(design, now);

  // Where the drawing lies on the screen.
  const { width, height } = size.value;
  const beside = besideOf(width);
  const places = labelPlaces(spotsOnScreen(now ?? known, { width, height, beside, above }), height);

  const drawn = useMemo(
    () =>
      now && (
        <BenchBox id="box-on-bench" design={design.value} picture={now} chosen={chosen} ringsOn={ringsOn} />
      ),
    [now, chosen, ringsOn],
  );
  return (
    <>
      <div class="plate-box" ref={ref} style={{ '--beside': `${beside}px` }}>
        {/* biome-ignore lint/a11y/useSemanticElements: a drawing that turns is no set of fields. */}
        <div
          class="turning"
          role="group"
          aria-label="Drawing of the box. Arrow keys turn and tip it."
          tabIndex={0}
          {...touch}
          {...(now ? {} : asBuilt)}
        >
          {drawn}
        </div>
        <p class="heard" role="status">
          {!now || (bench.turn.value === 0 && bench.tip.value === 0) ? '' : sideOfBox(now)}
        </p>
        <Leaders places={places} width={width} height={height} chosen={chosen} beside={beside} />
      </div>
      <PartNames
        places={places}
        beside={beside}
        chosen={part}
        values={design.value.values}
        counts={counts.value}
        onPart={onPart}
      />
    </>
  );
}

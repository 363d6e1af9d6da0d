/**
 * The plate of the bench: the box with the names of its parts round it, the chosen part under the glass, and what turns
 * and opens the box. A phone has the box and the glass alone, and the state of the checks below them.
 */
import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Design } from '../../box/design/design.ts';
import { aspectOf, Glass } from '../../figures/box/glass/Glass.tsx';
import { isPlanned, panesOf } from '../../figures/box/glass/panes.ts';
import { poses } from '../../figures/box/poses.ts';
import type { Count } from '../verdicts/Mark.tsx';
import { Arrow } from './Arrow.tsx';
import { asBuilt } from './as-built.ts';
import { BoxOnBench } from './BoxOnBench.tsx';
import { type Bench, tipBy } from './bench-state.ts';
import { useLate } from './Late.tsx';
import { nameOfPart, type PartOfBench } from './parts.ts';
import { Turn } from './Turn.tsx';
import { type KnownPicture, useAfter, usePicture } from './use-picture.ts';
import { useSize } from './use-size.ts';

interface Props {
  bench: Bench;
  /** The last box that could be drawn. */
  design: ReadonlySignal<Design>;
  counts: ReadonlySignal<(part: PartOfBench) => Count>;
  known: KnownPicture;
  onPart: (part: PartOfBench) => void;
  /** Stands below the drawing on a phone. */
  children: ComponentChildren;
}

export function Plate({ bench, design, counts, known, onPart, children }: Props) {
  const drawing = usePicture(design, bench);
  return (
    <section class="plate" aria-label="The box">
      <div class="plate-sheet">
        <BoxOnBench
          bench={bench}
          design={design}
          counts={counts}
          known={known}
          drawing={drawing}
          onPart={onPart}
        />
        <GlassOnBench bench={bench} design={design} isAwake={useAfter(drawing.isDrawn)} />
      </div>
      <div class="plate-foot">
        <TurnAndTip bench={bench} />
        <Poses bench={bench} />
      </div>
      {children}
    </section>
  );
}

/** What the glass is as large as while a page is built. */
const glassAtFirst = { width: 560, height: 168 };

function GlassOnBench({
  bench,
  design,
  isAwake,
}: Pick<Props, 'bench' | 'design'> & { isAwake: ReadonlySignal<boolean> }) {
  const { ref, size } = useSize(glassAtFirst);
  const part = bench.part.value;
  const { width, height } = size.value;
  const now = design.value;
  // How the parts lie on the boards is worked out by what is fetched late.
  const late = useLate(part === 'board');
  if (!isAwake.value) return <div class="glass" ref={ref} {...asBuilt} />;
  const panes =
    part !== 'board'
      ? panesOf(part, now, aspectOf(width, height))
      : typeof late === 'object' && isPlanned(now)
        ? [late.boardPane(now)]
        : [];
  return (
    <div class="glass" ref={ref}>
      <Glass panes={panes} title={`Under the glass: ${nameOfPart[part]}`} width={width} height={height} />
    </div>
  );
}

function TurnAndTip({ bench }: Pick<Props, 'bench'>) {
  return (
    <span class="turns">
      <Turn bench={bench} />
      <span class="tip">
        <button type="button" class="quiet bare" aria-label="tip up" onClick={() => tipBy(bench, 1)}>
          <Arrow to="up" />
        </button>
        <span aria-hidden="true">tip</span>
        <button type="button" class="quiet bare" aria-label="tip down" onClick={() => tipBy(bench, -1)}>
          <Arrow to="down" />
        </button>
      </span>
    </span>
  );
}

function Poses({ bench: { pose } }: Pick<Props, 'bench'>) {
  return (
    <span class="poses">
      {poses.map((one) => (
        <button
          key={one}
          type="button"
          class="quiet bare"
          aria-pressed={pose.value === one}
          onClick={() => {
            pose.value = one;
          }}
        >
          {one}
        </button>
      ))}
    </span>
  );
}

/** Cup from the bend of the rings: the exact depth, beside the short formula and its range. */
import { useSignal } from '@preact/signals';
import { woodById } from '../../../box/wood/woods.ts';
import { cupAnyWidth, cupExact, cupNarrow } from '../../../calc/board/cup.ts';
import { shapeAfter } from '../../../calc/board/log-shape.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { outsideRange, work } from '../../../calc/core/working.ts';
import { CupByDistance } from '../../../figures/board/CupByDistance.tsx';
import { DriedPiece } from '../../../figures/board/DriedPiece.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { NumberControl } from '../../kit/Control.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { Drying } from './controls.tsx';
import { fields } from './fields.ts';
import { log, moisture, shrinkagesHere } from './state.ts';

/** Thickness of the board, mm. */
const thick = 20;

export function RingCupLab() {
  const store = useStore();
  const width = useSignal(125);
  const distance = useSignal(60);
  const units = store.units.value;
  const shrinkages = shrinkagesHere(woodById(store.values.value.species));
  const board = {
    center: [0, distance.value + thick / 2],
    width: width.value,
    thickness: thick,
    turn: 0,
  } as const;
  const shape = isRefused(shrinkages) ? shrinkages : shapeAfter(board, shrinkages, 24);
  const { from, to } = moisture.value;
  const ready = !isRefused(shrinkages) && !isRefused(shape);
  const given = ready
    ? { w: width.value, R: distance.value, S_R: shrinkages.radial, S_T: shrinkages.tangential }
    : undefined;
  const line = {
    kind: 'length',
    as: 'fine',
    units,
    rule: 'bark-side-goes-hollow',
  } as const;
  const beyond = given && outsideRange(cupNarrow, given);
  return (
    <LabFrame
      title="Cup from bent rings"
      picture={
        ready && given ? (
          <>
            <DriedPiece
              piece={board}
              shape={shape}
              log={log}
              description={`A flat-sawn board before, dashed, and after going from ${from} to ${to} % moisture content, with the change magnified.`}
            />
            <CupByDistance
              width={width.value}
              distance={distance.value}
              shrinkages={shrinkages}
              description="The cup falls fast with the distance of the face from the pith. The short formula is drawn only where it holds."
            />
            <p class="says">
              From {from} to {to} % moisture the bark side goes {to > from ? 'crowned' : 'hollow'}. The face
              toward the pith bends by{' '}
              <Quantity value={Math.abs(cupExact.compute(given))} kind="length" as="fine" />.{' '}
              {beyond
                ? 'The board is too wide for its distance from the pith: the short formula gives no number here.'
                : 'The board is narrow for its distance from the pith: the short formula will do.'}
            </p>
          </>
        ) : (
          <p class="says message" role="status">
            {[shrinkages, shape].find(isRefused)?.refused}
          </p>
        )
      }
      controls={
        <>
          <NumberControl
            field={fields.width}
            value={width.value}
            system={store.units.value}
            set={(to) => {
              width.value = to;
            }}
          />
          <NumberControl
            field={fields.distance}
            value={distance.value}
            system={store.units.value}
            set={(to) => {
              distance.value = to;
            }}
          />
          <details class="more">
            <summary>more to change</summary>
            <Drying store={store} />
          </details>
        </>
      }
      results={
        given && (
          <>
            <RelationLine {...line} label="cup, exactly" working={work(cupExact, given)} />
            <RelationLine {...line} label="cup, formula for any width" working={work(cupAnyWidth, given)} />
            <RelationLine
              {...line}
              label="cup, short formula for narrow boards"
              working={work(cupNarrow, given)}
            />
          </>
        )
      }
    />
  );
}

/** Two things that cup a board: the bend of its rings, and faces that are not equally moist. */
import { useSignal } from '@preact/signals';
import { woodById } from '../../box/woods.ts';
import { cupAnyWidth, cupExact, cupFromFaces, cupNarrow } from '../../calc/cup.ts';
import { shapeAfter } from '../../calc/log-shape.ts';
import { isRefused } from '../../calc/refusal.ts';
import { outsideRange } from '../../calc/relation.ts';
import { CupByDistance } from '../../figures/CupByDistance.tsx';
import { CupStrips } from '../../figures/CupStrips.tsx';
import { DriedPiece } from '../../figures/DriedPiece.tsx';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { useStore } from '../../notebook/use-store.ts';
import { NumberControl } from '../Control.tsx';
import { LabFrame } from '../Lab.tsx';
import { RelationLine } from '../ResultLine.tsx';
import { Drying } from './controls.tsx';
import { fields } from './fields.ts';
import { log, moisture, shrinkagesHere } from './state.ts';

/** Thickness of the board in the first figure, mm. */
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
    digits: 2,
    denominator: 1000,
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
              towards the pith bends by{' '}
              <Quantity
                value={Math.abs(cupExact.compute(given))}
                kind="length"
                digits={2}
                denominator={1000}
              />
              .{' '}
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
            system={units}
            set={(value) => {
              width.value = value;
            }}
          />
          <NumberControl
            field={fields.distance}
            value={distance.value}
            system={units}
            set={(value) => {
              distance.value = value;
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
            <RelationLine {...line} given={given} label="cup, exactly" of={cupExact} />
            <RelationLine {...line} given={given} label="cup, formula for any width" of={cupAnyWidth} />
            <RelationLine
              {...line}
              given={given}
              label="cup, short formula for narrow boards"
              of={cupNarrow}
            />
          </>
        )
      }
    />
  );
}

/** Points of drying, and distance from the pith in mm, that the rings alone are given to compare. */
const alone = { points: 4, R: 100 } as const;

export function FacesCupLab() {
  const store = useStore();
  const { tangentialCoefficient: C_T, radialCoefficient: C_R } = store.values.value;
  const width = useSignal(150);
  const thickness = useSignal(6);
  const difference = useSignal(1);
  const units = store.units.value;
  const byFaces = (C: number) => ({ C, dM: difference.value, w: width.value, T: thickness.value });
  const rings = { w: width.value, R: alone.R, S_R: alone.points * C_R, S_T: alone.points * C_T };
  const lines = [
    { label: 'flat-sawn, unequal faces', of: cupFromFaces, given: byFaces(C_T) },
    { label: 'quarter-sawn, unequal faces', of: cupFromFaces, given: byFaces(C_R) },
    { label: 'flat-sawn, rings alone', of: cupExact, given: rings },
  ] as const;
  // Each relation takes what it knows from its own row.
  const cupOf = ({ of, given }: (typeof lines)[number]) =>
    outsideRange(of as typeof cupExact, given as typeof rings)
      ? undefined
      : (of as typeof cupExact).compute(given as typeof rings);
  const strips = lines.map((row) => ({ word: row.label, cup: cupOf(row) }));
  const known = strips[0]?.cup;
  return (
    <LabFrame
      title="Cup from unequal faces"
      picture={
        <>
          <CupStrips
            width={width.value}
            thickness={thickness.value}
            strips={strips}
            description={strips
              .map(({ word, cup }) => `${word}: ${cup === undefined ? 'no number' : `${cup.toFixed(2)} mm`}`)
              .join(', ')}
          />
          <p class="says">
            {known === undefined ? (
              'This panel would bend too far for the formula, which takes the bend as shallow. Make it thicker or narrower, or the difference smaller.'
            ) : (
              <>
                With the upper face {difference.value} {difference.value === 1 ? 'point' : 'points'} drier, a
                flat-sawn panel goes hollow by{' '}
                <Quantity value={known} kind="length" digits={2} denominator={1000} />. Its rings alone,{' '}
                {alone.points} points drier all through and{' '}
                <Quantity value={alone.R} kind="length" digits={0} denominator={8} /> from the pith, give{' '}
                <Quantity value={strips[2]?.cup ?? 0} kind="length" digits={2} denominator={1000} />.
              </>
            )}
          </p>
        </>
      }
      controls={(
        [
          ['panelThickness', thickness],
          ['difference', difference],
          ['panelWidth', width],
        ] as const
      ).map(([name, own]) => (
        <NumberControl
          key={name}
          field={fields[name]}
          value={own.value}
          system={units}
          set={(value) => {
            own.value = value;
          }}
        />
      ))}
      results={lines.map((row) => (
        <RelationLine
          key={row.label}
          {...row}
          kind="length"
          digits={2}
          denominator={1000}
          units={units}
          rule="cup-from-unequal-faces"
        />
      ))}
    />
  );
}

/** Cup from faces that are not equally moist, beside what the rings alone would do. */
import { useSignal } from '@preact/signals';
import { cupExact, cupFromFaces } from '../../../calc/board/cup.ts';
import { work } from '../../../calc/core/working.ts';
import { CupStrips } from '../../../figures/board/CupStrips.tsx';
import { Quantity, said } from '../../../figures/parts/Quantity.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { OwnNumber } from '../../lesson/OwnNumber.tsx';
import { fields } from './fields.ts';

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
    { label: 'flat-sawn, unequal faces', working: work(cupFromFaces, byFaces(C_T)) },
    { label: 'quarter-sawn, unequal faces', working: work(cupFromFaces, byFaces(C_R)) },
    { label: 'flat-sawn, rings alone', working: work(cupExact, rings) },
  ];
  const strips = lines.map(({ label, working: { value, outside } }) => ({
    word: label,
    cup: outside ? undefined : value,
  }));
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
              .map(
                ({ word, cup }) =>
                  `${word}: ${cup === undefined ? 'no number' : said(cup, 'length', { digits: 2, denominator: 1000 })}`,
              )
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
        <OwnNumber key={name} field={fields[name]} of={own} system={store.units.value} />
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

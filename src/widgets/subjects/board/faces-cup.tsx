/** Cup from faces that are not equally moist, beside what the rings alone would do. */
import type { InputsOf } from '../../../box/core/field.ts';
import { length, number } from '../../../box/core/inputs.ts';
import { numberOf, type Result, rowsOf } from '../../../box/core/result.ts';
import type { WoodFigures } from '../../../box/wood/figures.ts';
import { cupExact, cupFromFaces } from '../../../calc/board/cup.ts';
import { CupStrips } from '../../../figures/board/CupStrips.tsx';
import { Quantity, said } from '../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../units/index.ts';
import { lab } from '../../lesson/lab-spec.ts';

/** Points of drying, and distance from the pith in mm, that the rings alone are given to compare. */
const alone = { points: 4, R: 100 } as const;

const own = {
  panelThickness: length('panel thickness', {
    low: 3,
    high: 25,
    step: 0.5,
    inchStep: INCH / 32,
    denominator: 32,
    start: 6,
  }),
  difference: number('moisture of one face minus the other', 'points', {
    low: 0,
    high: 4,
    step: 0.25,
    digits: 2,
    start: 1,
  }),
  panelWidth: length('panel width', { low: 20, high: 300, start: 150 }),
};
type V = WoodFigures & InputsOf<typeof own>;

const row = rowsOf<V>();
const line = {
  kind: 'length',
  as: 'fine',
  rule: 'cup-from-unequal-faces',
} as const;
const byFaces = (C: 'tangentialCoefficient' | 'radialCoefficient', label: string): Result<V> =>
  row(cupFromFaces, (v) => ({ C: v[C], dM: v.difference, w: v.panelWidth, T: v.panelThickness }), {
    ...line,
    label,
  });
const strips = [
  byFaces('tangentialCoefficient', 'flat-sawn, unequal faces'),
  byFaces('radialCoefficient', 'quarter-sawn, unequal faces'),
  row(
    cupExact,
    (v) => ({
      w: v.panelWidth,
      R: alone.R,
      S_R: alone.points * v.radialCoefficient,
      S_T: alone.points * v.tangentialCoefficient,
    }),
    { ...line, label: 'flat-sawn, rings alone' },
  ),
];
/** Depth of each strip's cup, mm; undefined where its relation does not hold. */
const cupsOf = (v: V) =>
  strips.map((strip) => {
    const cup = numberOf(strip, v);
    return { word: strip.label, cup: Number.isNaN(cup) ? undefined : cup };
  });

export const facesCupLab = lab({
  title: 'Cup from unequal faces',
  own,
  controls: ['panelThickness', 'difference', 'panelWidth'],
  solve: (v) => ({ cups: cupsOf(v) }),
  figure: ({ values: { panelWidth, panelThickness, cups } }) => (
    <CupStrips
      width={panelWidth}
      thickness={panelThickness}
      strips={cups}
      description={cups
        .map(
          ({ word, cup }) =>
            `${word}: ${cup === undefined ? 'no number' : said(cup, 'length', { as: 'fine' })}`,
        )
        .join(', ')}
    />
  ),
  says: ({ difference, cups: [flat, , rings] }) =>
    flat?.cup === undefined ? (
      'This panel would bend too far for the formula, which takes the bend as shallow. Make it thicker or narrower, or the difference smaller.'
    ) : (
      <>
        With the upper face {difference} {difference === 1 ? 'point' : 'points'} drier, a flat-sawn panel goes
        hollow by <Quantity value={flat.cup} kind="length" as="fine" />. Its rings alone, {alone.points}{' '}
        points drier all through and <Quantity value={alone.R} kind="length" digits={0} denominator={8} />{' '}
        from the pith, give <Quantity value={rings?.cup ?? 0} kind="length" as="fine" />.
      </>
    ),
  results: strips,
});

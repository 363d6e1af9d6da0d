/** A bottom that has settled in one house and settles in another; the two climates belong to this lab and not to the box. */
import type { InputsOf } from '../../../box/core/field.ts';
import { number } from '../../../box/core/inputs.ts';
import { rowsOf } from '../../../box/core/result.ts';
import type { MovementValues } from '../../../box/subjects/movement/results.ts';
import { equilibriumMoisture } from '../../../calc/air/moisture.ts';
import { plywoodCoefficient, plywoodRange } from '../../../calc/movement/lengthwise.ts';
import { coefficientHolds, movementOfWidth, perPointFromShrinkage } from '../../../calc/movement/movement.ts';
import * as moving from '../../../calc/movement/moving-house.ts';
import { MovedPanel } from '../../../figures/movement/MovedPanel.tsx';
import { lab } from '../../lesson/lab-spec.ts';
import { Fine } from './august/lid-august.tsx';

const humidity = { low: 15, high: 85, step: 1 } as const;
const own = {
  before: number('humidity in the old house', 'percent', {
    ...humidity,
    start: 60,
    help: 'The middle of its year, where the wood has settled.',
  }),
  after: number('humidity in the new house', 'percent', { ...humidity, start: 30 }),
};
type V = MovementValues & InputsOf<typeof own>;

/** Movement of the bottom per point between the two, by the method that holds; NaN where none does. */
function perPoint(v: V, M_1: number, M_2: number): number {
  if (v.bottom === 'plywood')
    return Math.min(M_1, M_2) >= plywoodRange[0] && Math.max(M_1, M_2) <= plywoodRange[1]
      ? plywoodCoefficient.across
      : Number.NaN;
  return coefficientHolds(M_1, M_2)
    ? movementOfWidth.compute({ e_T: v.tangentialCoefficient, e_R: v.radialCoefficient, theta: v.ringAngle })
    : perPointFromShrinkage.compute({
        S: movementOfWidth.compute({
          e_T: v.tangentialShrinkage,
          e_R: v.radialShrinkage,
          theta: v.ringAngle,
        }),
        M_i: M_1,
      });
}

function given(v: V) {
  const [M_1, M_2] = [v.before, v.after].map((humidity) => equilibriumMoisture(v.temperature, humidity)) as [
    number,
    number,
  ];
  return { p: v.bottomPlayToday, W: v.bottomWidth, C: perPoint(v, M_1, M_2), M_1, M_2 };
}
const inGroove = (v: V) => ({ ...given(v), g: v.grooveDepth });
const row = rowsOf<V>();
const say = (label: string) =>
  ({ label, kind: 'length', as: 'fine', rule: 'before-you-move-house' }) as const;

export const moveHouse = lab({
  title: 'A bottom moves house',
  own,
  controls: ['before', 'after', 'ringAngle'],
  more: ['species', 'bottomGap', 'grooveDepth', 'wantedWidth', 'temperature'],
  figure: ({ values: v }) => (
    <MovedPanel
      values={v}
      humidity={[v.before, v.after]}
      play={[v.bottomPlayToday, moving.playAfterMove.compute(given(v))]}
    />
  ),
  results: [
    row(moving.playAfterMove, given, say('play after the move, both sides; below zero it jams')),
    row(moving.heldAfterMoveCentral, inGroove, say('held after the move, central, each side')),
    row(moving.heldAfterMoveCrept, inGroove, say('held after the move, crept, worse side')),
  ],
  says: (v) => {
    const play = moving.playAfterMove.compute(given(v));
    const [central, crept] = [moving.heldAfterMoveCentral, moving.heldAfterMoveCrept].map((of) =>
      of.compute(inGroove(v)),
    ) as [number, number];
    if (Number.isNaN(play)) return 'The tables have no figure for this wood in this air.';
    if (play < 0)
      return (
        <>
          In the new house it wants <Fine of={-play} /> more than its grooves give: it pushes the walls apart.
        </>
      );
    if (central < 0) return 'It drops out of its grooves, however it is held.';
    return crept < 0 ? (
      <>
        Left to itself it can creep aside and drop out; held in the middle, each groove keeps{' '}
        <Fine of={central} />.
      </>
    ) : (
      <>
        It stays in: <Fine of={crept} /> at the worse side once crept, <Fine of={central} /> at each side in
        the middle.
      </>
    );
  },
});

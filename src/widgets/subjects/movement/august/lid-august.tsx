/** The guess of the lid that slid in March: on the front page, and in the lesson on wood movement. */
import { augustRange, narrowSheet } from '../../../../figures/movement/august/august-layouts.ts';
import { LidAugust } from '../../../../figures/movement/august/LidAugust.tsx';
import { Quantity } from '../../../../figures/parts/Quantity.tsx';
import { INCH } from '../../../../units/index.ts';
import type { NumberGuess } from '../../../lesson/guess-spec.ts';

export const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;
export const smallLength = { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 2 } as const;

export const lidAugust: NumberGuess = {
  type: 'number',
  label: 'your mark',
  event: 'Let August come',
  field: { ...smallLength, ...augustRange },
  // Made in the dry air of March, with less play than the example's lid has.
  pins: (system) => ({ humidityToday: 35, humidityDamp: 60, lidPlay: system === 'mm' ? 0.8 : INCH / 32 }),
  figure: LidAugust,
  frame: narrowSheet.frame,
  start: () => 0,
  truth: (v) => v.lidSwelling,
  controls: ['ringAngle'],
  answer: (v) => (
    <>
      The lid grows <Fine of={v.lidSwelling} />.{' '}
      {v.lidPlayDamp < 0 ? (
        <>
          <Quantity value={v.lidPlay} kind="length" digits={2} denominator={64} /> were left, so it jams.
        </>
      ) : (
        <>
          <Fine of={v.lidPlayDamp} /> of its play are left, so it still slides.
        </>
      )}
    </>
  ),
};

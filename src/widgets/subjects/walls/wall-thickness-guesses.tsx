/** Guesses of the lesson on wall thickness and size. */
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lostFrame, lostRange, PouredInside } from '../../../figures/walls/PouredInside.tsx';
import { giveFrame, giveRange, sideGives, ThinSide } from '../../../figures/walls/ThinSide.tsx';
import { INCH } from '../../../units/index.ts';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Fine = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="fine" />;

export const wallThicknessGuesses: Readonly<Record<string, GuessSpec>> = {
  'poured-inside': {
    type: 'number',
    label: 'lost to the contents',
    event: 'Pour it out',
    field: { kind: 'percent', step: 1, digits: 0, ...lostRange },
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'outside', wantedLength: 180, wantedWidth: 120, wantedHeight: 60, wall: 19 }
        : {
            sizeFrom: 'outside',
            wantedLength: 7 * INCH,
            wantedWidth: 4.75 * INCH,
            wantedHeight: 2.375 * INCH,
            wall: 0.75 * INCH,
          },
    figure: PouredInside,
    frame: lostFrame,
    start: () => 0,
    truth: (v) => v.shareNotInside,
    controls: ['wall'],
    answer: (v) => (
      <>
        <Quantity value={v.shareNotInside} kind="percent" digits={0} /> of the outside is no use to the
        contents.
      </>
    ),
  },
  'thin-side': {
    type: 'number',
    label: 'it gives',
    event: 'Push',
    field: { kind: 'length', step: 0.1, inchStep: INCH / 64, digits: 1, ...giveRange },
    pins: (system) =>
      system === 'mm'
        ? { sizeFrom: 'outside', wantedLength: 200, wantedWidth: 125, wantedHeight: 60, wall: 8 }
        : {
            sizeFrom: 'outside',
            wantedLength: 8 * INCH,
            wantedWidth: 5 * INCH,
            wantedHeight: 2.375 * INCH,
            wall: (5 / 16) * INCH,
          },
    figure: ThinSide,
    frame: giveFrame,
    start: () => 0,
    truth: (v) => sideGives(v, 0.5),
    controls: ['push'],
    answer: (v) => (
      <>
        Half as thick it gives <Fine of={sideGives(v, 0.5)} />, where the whole wall gives{' '}
        <Fine of={sideGives(v, 1)} />.
      </>
    ),
  },
};

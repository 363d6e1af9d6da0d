/** Guesses of the lesson on air and wood. */
import {
  HeatedGuess,
  heatedFrame,
  humidityRange,
  onceHeated,
  roomForWater,
  winterDay,
} from '../../../figures/air/HeatedGuess.tsx';
import { daysOf, daysRange, digitsOf, ThickWait, waitFrame } from '../../../figures/air/ThickWait.tsx';
import {
  moistureRange,
  WinterGuess,
  winterFrame,
  winterHumidity,
} from '../../../figures/air/WinterGuess.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import type { GuessSpec } from '../../lesson/guess-spec.ts';

const Percent = ({ of, digits = 0 }: { of: number; digits?: 0 | 1 }) => (
  <Quantity value={of} kind="percent" digits={digits} />
);
const Days = ({ of }: { of: number }) => <Quantity value={of} kind="days" digits={digitsOf(of)} />;

export const airAndWoodGuesses: Readonly<Record<string, GuessSpec>> = {
  'winter-moisture': {
    type: 'number',
    label: 'moisture in winter',
    event: 'Let winter come',
    field: { kind: 'percent', step: 0.5, digits: 1, ...moistureRange },
    pins: () => ({ humidityToday: 65, humidityDry: winterHumidity, humidityDamp: 65 }),
    figure: WinterGuess,
    frame: winterFrame,
    start: (v) => v.moistureToday,
    truth: (v) => v.moistureDry,
    controls: ['humidityDry'],
    answer: (v) => (
      <>
        In the driest air the board comes to <Percent of={v.moistureDry} digits={1} />, from{' '}
        <Percent of={v.moistureToday} digits={1} /> in the shop.
      </>
    ),
  },
  'heated-indoors': {
    type: 'number',
    label: 'humidity once heated',
    event: 'Heat it',
    field: { kind: 'percent', step: 1, digits: 0, ...humidityRange },
    figure: HeatedGuess,
    frame: heatedFrame,
    start: () => winterDay.humidity,
    truth: onceHeated,
    answer: () => (
      <>
        It is <Percent of={onceHeated()} />: the water stays, but this air can hold{' '}
        <Quantity value={roomForWater} kind="ratio" digits={1} /> times as much.
      </>
    ),
  },
  'twice-as-thick-waits': {
    type: 'number',
    label: 'the thick one is there on day',
    event: 'Let it lie',
    field: { kind: 'days', step: 1, digits: 0, ...daysRange },
    figure: ThickWait,
    frame: waitFrame,
    start: () => 0,
    truth: (v, system) => daysOf(v, system, 2),
    controls: ['species'],
    answer: (v, system) => (
      <>
        The thick one needs about <Days of={daysOf(v, system, 2)} />, the thin one{' '}
        <Days of={daysOf(v, system, 1)} />.
      </>
    ),
  },
};

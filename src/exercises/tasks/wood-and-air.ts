/** What the exercises about moving wood share: woods, air, the first two steps, and the slips of those steps. */

import { woodById } from '../../box/wood/woods.ts';
import { moistureOfAir, sorptionInputs } from '../../calc/air/moisture.ts';
import { toDecimals } from '../../units/index.ts';
import type { Line, Mistake } from '../core/exercise.ts';
import { plain, points, slip, step } from '../core/make.ts';

/** Woods whose movement along and across the rings was read in the table. */
export const woodIds = [
  'red-alder',
  'white-ash',
  'american-basswood',
  'american-beech',
  'yellow-birch',
  'butternut',
  'black-cherry',
  'red-maple',
  'silver-maple',
  'sugar-maple',
  'black-walnut',
] as const;
export const cuts = ['quarter-sawn', 'flat-sawn'] as const;

/** Air of a room, °C, for the table from humidity to moisture. */
const roomTemperature = 21;
/** Relative humidities of the table, %. */
const humidities = [30, 35, 40, 45, 50, 55, 60, 65, 70] as const;

/** Moisture content, %, that wood settles to: to one decimal, as the table given to the learner prints it. */
export const moistureAt = (humidity: number): number =>
  toDecimals(moistureOfAir.compute(sorptionInputs(roomTemperature, humidity)), 1);

export const moistureTable = {
  title: 'What wood settles to in a room at 21 °C (70 °F): relative humidity, moisture content',
  rows: humidities.map((one) => [`${one} %`, `${moistureAt(one).toFixed(1)} %`] as const),
};

/** The two coefficients of a wood, per 1 % of moisture content. */
function movementOf(wood: string) {
  const { name, radialCoefficient, tangentialCoefficient } = woodById(wood)!;
  return { name, across: radialCoefficient!.value, along: tangentialCoefficient!.value };
}

/** Movement of the width per 1 % of moisture content for this cut, and that of the other. */
export function perPoint(wood: string, cut: string) {
  const { across, along } = movementOf(wood);
  return cut === 'quarter-sawn' ? { own: across, other: along } : { own: along, other: across };
}

/** The lines of the numbers given about a wood. */
export function givenWood(wood: string, cut: string) {
  const { name, across, along } = movementOf(wood);
  return [
    { label: 'Wood', text: `${name}, ${cut}` },
    {
      label: 'It moves for each 1 % of moisture content',
      text: `${across} of its size across the rings, ${along} along them`,
    },
  ];
}

/** First step: which of the two figures. */
export function ringStep(wood: string, cut: string): Line {
  const { own, other } = perPoint(wood, cut);
  return step(
    [
      'rings',
      `Choose the figure for ${cut} wood: ${cut === 'quarter-sawn' ? 'its width lies across the rings' : 'its width lies along the rings'}.`,
      '',
    ],
    'movement for each 1 % of moisture content',
    own,
    own / 1000,
    plain,
    [slip('other-rings', other, otherRings(cut))],
  );
}

/** Second step: from the humidities to points of moisture content. */
export const pointsStep = (from: number, to: number): Line => {
  const [first, last] = [moistureAt(from), moistureAt(to)];
  const [low, high] = [Math.min(first, last), Math.max(first, last)];
  return step(
    [
      'air',
      'Read the moisture content for both humidities in the table, and take one from the other.',
      `${high.toFixed(1)} % − ${low.toFixed(1)} %`,
    ],
    'change of moisture content',
    toDecimals(high - low, 1),
    0.05,
    points,
    [slip('humidity-points', Math.abs(to - from), humidityPoints)],
  );
};

/** Points of moisture content between two humidities of the table, always positive. */
export const pointsBetween = (from: number, to: number): number =>
  toDecimals(Math.abs(moistureAt(to) - moistureAt(from)), 1);

const humidityPoints =
  'You took points of humidity for points of moisture. Read the moisture content for both humidities in the table first; the wood follows that.';
const otherRings = (cut: string) =>
  cut === 'quarter-sawn'
    ? 'You took the figure along the rings. The rings of quarter-sawn wood stand upright in the board, so its width lies across them.'
    : 'You took the figure across the rings. The rings of flat-sawn wood lie flat in the board, so its width lies along them.';

/** What the usual slips about moving wood would give, each told by what it does to the change of size. */
interface Moving {
  readonly wood: string;
  readonly cut: string;
  /** Size across and along the grain, mm. */
  readonly width: number;
  readonly length: number;
  readonly from: number;
  readonly to: number;
}

/** The slips of a change of size; `then` makes the answer from the change. */
export function movingSlips(
  { wood, cut, width, length, from, to }: Moving,
  then = (change: number) => change,
): Mistake[] {
  const { own, other } = perPoint(wood, cut);
  const change = pointsBetween(from, to);
  return [
    slip('humidity-points', then(width * own * Math.abs(to - from)), humidityPoints),
    slip('other-rings', then(width * other * change), otherRings(cut)),
    slip(
      'along-the-grain',
      then(length * own * change),
      'You let the length move. Along the grain wood hardly moves at all: put in the width, which lies across the grain.',
    ),
    slip(
      'half',
      then((width * own * change) / 2),
      'You took half. The whole width moves: the half belongs to one edge of a panel that is held in the middle.',
    ),
    slip(
      'one-moisture',
      then(width * own * moistureAt(to)),
      'You put in the moisture content at the end. Only the change counts: take the first from it.',
    ),
  ];
}

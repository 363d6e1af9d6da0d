/** E4: how much a piece swells. Coefficients and air: Wood Handbook; common practice: damp room air of 55 to 70 %. */

import { exercise } from '../core/exercise.ts';
import { ask, fine } from '../core/make.ts';
import {
  changeOf,
  changeSlips,
  changeWay,
  drawSwelling,
  givenPiece,
  nearChange,
  stepsToPoints,
  swells,
} from './swelling.ts';
import { moistureTable } from './wood-and-air.ts';

export const e4 = exercise({
  id: 'e4',
  title: 'How much it swells',
  about: 'How much wider does a panel become in damp air?',
  lesson: 'wood-movement',
  rules: ['write-the-humidity', 'quarter-sawn-for-lids'],
  draw: drawSwelling,
  fits: swells,
  pose: (piece, system) => ({
    given: givenPiece(piece, system, [
      'Width, across the grain',
      'Length, along the grain',
      'Air while you build',
      'Dampest air it will meet',
    ]),
    table: moistureTable,
    question: 'By how much will it swell across the grain?',
    lines: [
      ...stepsToPoints(piece),
      ask(changeWay(piece, system), {
        label: 'swelling',
        key: changeOf(piece),
        within: nearChange(system),
        print: fine,
        mistakes: changeSlips(piece),
      }),
    ],
  }),
});

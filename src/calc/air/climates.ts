/**
 * Years of air to start from, named for kinds of climate, not for places.
 *
 * Every monthly value is invented. Where a published figure exists for the kind of place, the months were chosen
 * to agree with it, and `agreesWith` says with what; a test checks the agreement. Nobody's house is one of these.
 */
import type { YearOfAir } from './year.ts';

/** A year of air to start from. */
export interface Climate {
  /** Permanent name, kebab-case. */
  readonly id: string;
  readonly name: string;
  readonly where: 'indoors' | 'outdoors';
  readonly year: YearOfAir;
  /** The published figure that the invented months were made to agree with, and its source; absent: all invented. */
  readonly agreesWith?: string;
}

const wh = 'Wood Handbook (2010), figure 13-1¶';
const sweden = 'Swedish Wood guidance¶';

/** All months invented. Northern half of the globe; `halfYearLater` turns them over. */
export const climates: readonly Climate[] = [
  {
    id: 'heated-winter',
    name: 'Heated house: dry winter, damp summer',
    where: 'indoors',
    year: {
      temperature: [20, 20, 20, 20, 21, 23, 24, 24, 22, 21, 20, 20],
      humidity: [30, 31, 34, 39, 46, 53, 57, 57, 51, 44, 37, 32],
    },
    agreesWith: `Mean wood moisture 8 % over the year: ${wh}.`,
  },
  {
    id: 'heated-hard-winter',
    name: 'Heated house: hard winter',
    where: 'indoors',
    year: {
      temperature: [21, 21, 21, 21, 21, 22, 23, 22, 21, 21, 21, 21],
      humidity: [20, 20, 25, 35, 45, 53, 59, 60, 54, 45, 33, 24],
    },
    agreesWith: `Indoor humidity 10 to 25 % in winter and 45 to 60 % in summer, mean wood moisture 7.5 %: ${sweden}.`,
  },
  {
    id: 'dry-all-year',
    name: 'Dry all year, inland',
    where: 'indoors',
    year: {
      temperature: [20, 20, 20, 21, 22, 24, 25, 25, 23, 21, 20, 20],
      humidity: [30, 29, 28, 26, 26, 26, 32, 34, 31, 29, 29, 30],
    },
    agreesWith: `Mean wood moisture 6 % over the year: ${wh}.`,
  },
  {
    id: 'warm-damp-coast',
    name: 'Warm, damp coast',
    where: 'indoors',
    year: {
      temperature: [21, 21, 22, 23, 24, 25, 25, 25, 25, 24, 22, 21],
      humidity: [55, 55, 57, 59, 62, 65, 66, 66, 65, 61, 58, 56],
    },
    agreesWith: `Mean wood moisture 11 % over the year: ${wh}.`,
  },
  {
    id: 'steady-sea-coast',
    name: 'Mild sea coast, steady',
    where: 'indoors',
    year: {
      temperature: [18, 18, 18, 18, 19, 20, 21, 21, 20, 19, 18, 18],
      humidity: [52, 52, 52, 53, 55, 58, 60, 60, 58, 56, 54, 53],
    },
  },
  {
    id: 'unheated',
    name: 'Unheated shed: damp winter, drier summer',
    where: 'indoors',
    year: {
      temperature: [1, 1, 3, 7, 12, 16, 18, 17, 13, 9, 4, 2],
      humidity: [91, 90, 85, 76, 69, 67, 69, 73, 79, 85, 90, 92],
    },
    agreesWith: `Wood outdoors under cover 11 to 15 % in summer and 19 to 23 % in winter: ${sweden}.`,
  },
  {
    id: 'outdoors-hard-winter',
    name: 'Outdoors, inland: cold winter',
    where: 'outdoors',
    year: {
      temperature: [-6, -4, 1, 8, 14, 18, 21, 20, 15, 9, 3, -3],
      humidity: [82, 79, 74, 68, 68, 70, 72, 74, 76, 78, 82, 84],
    },
  },
  {
    id: 'outdoors-sea-coast',
    name: 'Outdoors, sea coast: mild winter',
    where: 'outdoors',
    year: {
      temperature: [5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 6],
      humidity: [86, 84, 81, 78, 77, 78, 79, 80, 81, 84, 86, 87],
    },
  },
];

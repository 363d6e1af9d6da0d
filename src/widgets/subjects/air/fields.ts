/** Numbers that the figures on air have for themselves, beside those of the box. */

import type { NumberField } from '../../../box/core/field.ts';
import { INCH } from '../../../units/index.ts';

const number = (
  label: string,
  kind: NumberField['kind'],
  low: number,
  high: number,
  step: number,
  help?: string,
): NumberField => ({ type: 'number', label, kind, low, high, step, digits: step < 1 ? 1 : 0, help });

export const fields = {
  outdoorTemperature: number('temperature outdoors', 'temperature', -25, 40, 1),
  outdoorHumidity: number('humidity outdoors', 'percent', 5, 100, 1),
  indoorTemperature: number('temperature indoors', 'temperature', 10, 30, 1),
  added: {
    ...number(
      'water from people, cooking and plants',
      'number',
      0,
      8,
      0.5,
      'Grams in each cubic meter of room air. Two to four is usual in a lived-in room§.',
    ),
  },
  thickness: {
    ...number('thickness of each board', 'length', 3, 50, 1),
    inchStep: INCH / 16,
    digits: 1,
    denominator: 16,
  },
  tight: number('boards that lie on each other without sticks', 'count', 1, 4, 1),
  arrival: number(
    'moisture of the wood when it comes',
    'percent',
    4,
    20,
    0.5,
    'Ask the seller, or use a meter.',
  ),
} as const satisfies Record<string, NumberField>;

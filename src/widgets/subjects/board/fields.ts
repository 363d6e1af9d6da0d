/** The numbers a reader moves in the labs of the board: labels, limits, steps. Lengths in mm. */

import type { NumberField } from '../../../box/core/field.ts';
import { length } from '../../../box/core/inputs.ts';
import { logRadius } from '../../../figures/board/LogEnd.tsx';
import { INCH } from '../../../units/index.ts';

const moisture = (label: string, help?: string): NumberField => ({
  type: 'number',
  label,
  kind: 'percent',
  low: 0,
  high: 40,
  step: 0.5,
  digits: 1,
  help,
});

export const fields = {
  up: length('middle of the board above the pith', { low: -logRadius, high: logRadius, start: 0 }),
  across: length('middle of the board beside the pith', { low: -logRadius, high: logRadius, start: 0 }),
  turn: {
    type: 'number',
    label: 'turn of the board',
    kind: 'angle',
    low: -90,
    high: 90,
    step: 1,
    digits: 0,
  },
  width: length('board width', { low: 10, high: 250, start: 0 }),
  thickness: { ...length('board thickness', { low: 3, high: 80, start: 0 }), step: 0.5, inchStep: INCH / 16 },
  from: moisture('moisture before'),
  to: moisture('moisture after', 'The printed coefficients hold from 6 to 14 %.'),
  distance: length('from the pith to the face', { low: 10, high: 300, start: 0 }),
} as const satisfies Record<string, NumberField>;

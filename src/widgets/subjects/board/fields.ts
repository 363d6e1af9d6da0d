/** The numbers a reader moves in the labs of the board: labels, limits, steps. Lengths in mm. */

import { length, type NumberField } from '../../../box/core/fields.ts';
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
  up: length('middle of the board above the pith', -logRadius, logRadius),
  across: length('middle of the board beside the pith', -logRadius, logRadius),
  turn: {
    type: 'number',
    label: 'turn of the board',
    kind: 'angle',
    low: -90,
    high: 90,
    step: 1,
    digits: 0,
  },
  width: length('board width', 10, 250),
  thickness: { ...length('board thickness', 3, 80), step: 0.5, inchStep: INCH / 16 },
  from: moisture('moisture before'),
  to: moisture('moisture after', 'The printed coefficients hold from 6 to 14 %.'),
  distance: length('from the pith to the face', 10, 300),
  panelWidth: length('panel width', 20, 300),
  panelThickness: { ...length('panel thickness', 3, 25), step: 0.5, inchStep: INCH / 32, denominator: 32 },
  difference: {
    type: 'number',
    label: 'moisture of one face minus the other',
    kind: 'points',
    low: 0,
    high: 4,
    step: 0.25,
    digits: 2,
  },
} as const satisfies Record<string, NumberField>;

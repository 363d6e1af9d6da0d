/**
 * The heights and thicknesses every part is built from, taken from the box and brought within what can be drawn.
 * What had to be changed for that is named by `refusals.ts`; a box without refusals is planned exactly as given.
 *
 * Heights in mm above the table, in the finished box. The closed height is one stack for all kinds:
 * lip, tongue of the bottom, inside, lid, lip. Lids of the kinds `lift-off` and `sawn` take their height out of it.
 */

import { practice } from '../core/practice.ts';
import type { Values } from '../whole/index.ts';

/** A groove as a band of heights, the same in every wall it runs through. */
export interface Band {
  readonly for: 'bottom' | 'lid';
  readonly seat: 'groove' | 'rabbet';
  readonly low: number;
  readonly high: number;
  readonly depth: number;
}

export interface Plan {
  readonly values: Values;
  /** Outside sizes of the closed box. */
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly wall: number;
  /** Upper face of the bottom; underside of the lid's panel. */
  readonly floor: number;
  readonly lidUnder: number;
  /** Top edge of the lower part: of the sides of a sliding-lid box, else the line between box and lid. */
  readonly rim: number;
  /** Top edge of the front. */
  readonly frontTop: number;
  /** Height lost at the saw line; 0 unless sawn. The box is glued up that much higher. */
  readonly sawn: number;
  readonly bottomThickness: number;
  readonly tongue: number;
  readonly lidThickness: number;
  readonly bottomBand: Band;
  readonly lidBand: Band;
}

const within = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);

/** The plan of a box, or `undefined` where its outside leaves no room between four walls. */
export function plan(values: Values): Plan | undefined {
  const { outsideLength: length, outsideWidth: width, outsideHeight: height, wall } = values;
  if (!(wall > 0 && length > 2 * wall && width > 2 * wall && height > 0)) return undefined;
  const sliding = values.kind === 'sliding';
  const floor = within(values.bottomLip + values.bottomTongue, 0, height);
  const lidTop = within(height - values.lidLip, floor, height);
  const lidUnder = within(lidTop - values.lidThickness, floor, lidTop);
  const rim = sliding ? height : within(height - values.lidHeight, floor, height);
  const bottomThickness = within(values.bottomThickness, 0, floor);
  const tongue =
    values.bottomSeat === 'rabbet' ? bottomThickness : within(values.bottomTongue, 0, bottomThickness);
  const grooveDepth = within(values.grooveDepth, 0, wall);
  return {
    values,
    length,
    width,
    height,
    wall,
    floor,
    lidUnder,
    rim,
    frontTop: sliding ? lidUnder : rim,
    sawn: values.kind === 'sawn' ? Math.max(0, values.kerf) : 0,
    bottomThickness,
    tongue,
    lidThickness: Math.max(0, lidTop - lidUnder - practice.lidSlip),
    bottomBand:
      values.bottomSeat === 'rabbet'
        ? { for: 'bottom', seat: 'rabbet', low: 0, high: floor, depth: grooveDepth }
        : {
            for: 'bottom',
            seat: 'groove',
            low: floor - tongue,
            high: floor + practice.bottomSlip,
            depth: grooveDepth,
          },
    lidBand: {
      for: 'lid',
      seat: 'groove',
      low: lidUnder,
      high: lidTop,
      depth: within(values.lidGrooveDepth, 0, wall),
    },
  };
}

/** Everything about a box that cannot be built, the first impossible thing first. */

import type { Box } from '../../subjects/inputs.ts';
import { fields, type NumberName } from '../../subjects/inputs.ts';
import type { Values } from '../../whole/index.ts';
import { type Condition, type Refusal, refuse } from '../refusal.ts';
import { jointConditions } from './joints.ts';
import { miterConditions } from './miters.ts';
import { openingConditions } from './opening.ts';
import { panelConditions } from './panels.ts';
import { sizeConditions } from './sizes.ts';

/** From the whole to the detail, as the box is drawn. */
const conditions: readonly Condition[] = [
  ...sizeConditions,
  ...panelConditions,
  ...openingConditions,
  ...jointConditions,
  ...miterConditions,
];

/** Numbers beyond this are refused before anything is derived from them: a box a kilometer long. */
const farthest = 1e6;

const numberNames = Object.entries(fields)
  .filter(([, row]) => row.type === 'number')
  .map(([name]) => name as NumberName);

/** Inputs that are no numbers at all, or far beyond any box. Nothing can be derived with them. */
export function unreadable(box: Box): Refusal[] {
  return numberNames
    .filter((name) => !(Math.abs(box[name]) <= farthest))
    .map((name) => {
      const { label, low, high } = fields[name];
      const above = box[name] > farthest;
      return {
        id: 'not-a-usable-number',
        what: Number.isFinite(box[name])
          ? `The ${label} is far beyond any box.`
          : `The ${label} is not a number.`,
        fix: `Give one from ${low} to ${high}.`,
        field: name,
        to: above ? high : low,
      };
    });
}

/** Every condition that stands in the way of the box with these values. */
export const refusalsOf = (values: Values): Refusal[] =>
  conditions.filter(({ breaks }) => breaks(values)).map((condition) => refuse(condition, values));

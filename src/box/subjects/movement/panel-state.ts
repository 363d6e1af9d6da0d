/** A panel in its grooves at any moisture of the year, and how its movement was found: for figures and sentences. */

import { isRefused, type Refused } from '../../../calc/core/refusal.ts';
import { plywoodMovement } from '../../../calc/movement/lengthwise.ts';
import { type Movement, movement, widthFigures } from '../../../calc/movement/movement.ts';
import { woodById } from '../../wood/woods.ts';
import type { MovementValues, PanelName } from './results.ts';

/** Sizes of one panel as figures need them, mm. */
export function panelOf(v: MovementValues, part: PanelName) {
  return part === 'bottom'
    ? { width: v.bottomWidth, groove: v.grooveDepth, play: 2 * v.bottomGap, thickness: v.bottomTongue }
    : { width: v.lidWidth, groove: v.lidGrooveDepth, play: v.lidPlay, thickness: v.lidThickness };
}

/** Change of `width` mm of the box's wood with rings at `angle` degrees, or why there is no figure. Growth is positive. */
export function changeOf(
  v: MovementValues,
  width: number,
  from: number,
  to: number,
  angle = v.ringAngle,
): Movement | Refused {
  const wood = woodById(v.species);
  return wood
    ? movement(width, from, to, widthFigures(wood, angle))
    : { refused: 'No movement figure is known for this wood.' };
}

const change = (v: MovementValues, part: PanelName, to: number) => {
  const { width } = panelOf(v, part);
  return v[part] === 'plywood'
    ? plywoodMovement(width, 'across', v.moistureToday, to)
    : changeOf(v, width, v.moistureToday, to);
};

/** Play of a panel, both sides together, mm, when its wood has `moisture` % MC; NaN where no figure holds. Below zero it jams. */
export function playAt(v: MovementValues, part: PanelName, moisture: number): number {
  const found = change(v, part, moisture);
  return panelOf(v, part).play - (isRefused(found) ? Number.NaN : found.change);
}

/** Which method gave the movement to the dampest and to the driest, and why, in a sentence or two. */
export function methodSays(v: MovementValues, part: PanelName): string {
  const say = (found: Movement | Refused) =>
    isRefused(found)
      ? `no number. ${found.refused}`
      : v[part] === 'plywood'
        ? found.because
        : `${found.method} method. ${found.because}`;
  const up = say(change(v, part, v.moistureDamp));
  const down = say(change(v, part, v.moistureDry));
  return up === down ? `How it was found: ${up}` : `To the dampest: ${up} To the driest: ${down}`;
}

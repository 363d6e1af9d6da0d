/** One step of the order of work, with the check that belongs to it and the caution where it can hurt. */
import type { Design } from '../design/design.ts';
import type { Plan } from '../design/plan.ts';
import type { CautionName } from './cautions.ts';
import type { PictureName } from './pictures/index.ts';
import type { Words } from './say.ts';

export interface Step {
  /** Permanent name, unique within a box's steps. */
  readonly id: string;
  readonly does: Words;
  /** What must be true before the next step. */
  readonly check?: Words;
  readonly caution?: CautionName;
  /** Rule files that give the reason. */
  readonly rule?: string;
  readonly picture: StepPicture;
}

/** What the picture of a step shows, by name; or why there is nothing to draw. */
export type StepPicture = PictureName | { readonly none: string };

/** A box that has a plan: only such a box can be worked at. */
export type Planned = Design & { readonly plan: Plan };

/** Fingers and dovetails are cut before the grooves, because they show where a groove may run. */
const interlocks = ({ box }: Design): boolean => box.joint === 'finger' || box.joint === 'dovetail';

/**
 * Whether the grooves are cut along the strip, before it is cut into walls: only where none stops short and no joint
 * has to come first (common practice).
 */
export const groovesOnStrip = (design: Design): boolean =>
  !interlocks(design) && design.grooves.every(({ startOpen, stopOpen }) => startOpen && stopOpen);

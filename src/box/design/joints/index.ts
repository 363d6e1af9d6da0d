/** The corner joints by the name the box gives them. */
import type { Box } from '../../subjects/inputs.ts';
import { butt } from './butt.ts';
import { dovetail } from './dovetail.ts';
import { finger } from './finger.ts';
import type { Joint } from './joint.ts';
import { keyedMiter, miter, splinedMiter } from './miter.ts';
import { rabbet } from './rabbet.ts';

export const joints: Readonly<Record<Box['joint'], Joint>> = {
  finger,
  dovetail,
  mitre: miter,
  'keyed-mitre': keyedMiter,
  'splined-mitre': splinedMiter,
  rabbet,
  butt,
};

/** From the finished to the rough size of a part. */

import { practice } from '../core/practice.ts';
import type { Size } from './part.ts';

/** Rough size of a solid part, mm: `planing` more on each face, and room to trim in length and width (common practice). */
export function roughSize({ length, width, thickness }: Size, planing: number): Size {
  return {
    length: length + practice.extraLength,
    width: width + practice.extraWidth,
    thickness: thickness + 2 * Math.max(0, planing),
  };
}

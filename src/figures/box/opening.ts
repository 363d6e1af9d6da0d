/** How the lid moves when the box is opened: out over the front, up, or round its hinges. */
import type { Design } from '../../box/design/design.ts';
import type { Vector } from '../../geometry/convex.ts';
import { shifted } from './from-design.ts';

/** Stops of hinged lids hold them at 95° to 105° (common practice); drawn in the middle. */
const stopAngle = 100;

export interface Opening {
  /** Moves what opens. */
  readonly move: (point: Vector) => Vector;
  /** What happens, in words. */
  readonly words: string;
  /** The way the lid goes lies in the plane across this axis, where it can be shown in a section. */
  readonly across: 'x' | 'y';
}

/** A lid half open; `undefined` where there is no box. */
export function openingOf({ plan, values, hinges, parts }: Design): Opening | undefined {
  if (!plan) return undefined;
  const { length, width, height, rim } = plan;
  switch (values.kind) {
    case 'sliding':
      return {
        move: shifted([-length / 2, 0, 0]),
        words: 'The lid slides out over the front; here it is half open.',
        across: 'y',
      };
    case 'lift-off': {
      const liner = parts.find(({ name }) => name === 'liner-front')?.pieces[0];
      const rise = Math.max(0, (liner?.block.z[1] ?? rim) - rim);
      return {
        move: shifted([0, 0, rise + 0.6 * height]),
        words: 'The lid lifts off; the liner guides it.',
        across: 'y',
      };
    }
    case 'sawn': {
      const turn = (stopAngle * Math.PI) / 180;
      const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
      const atBack = hinges?.wall === 'back' || (!hinges && width > length);
      const axis = atBack ? length : width;
      /** Distances from the hinge, toward the front of the lid and up. */
      const turned = (near: number, up: number) => [
        axis - (cos * (axis - near) - sin * (up - rim)),
        rim + sin * (axis - near) + cos * (up - rim),
      ];
      return {
        move: ([x, y, z]) => {
          const [run, up] = turned(atBack ? x : y, z) as [number, number];
          return atBack ? [run, y, up] : [x, run, up];
        },
        words: `The lid turns on its hinges to a stop between 95° and 105°; here ${stopAngle}°.`,
        across: atBack ? 'y' : 'x',
      };
    }
  }
}

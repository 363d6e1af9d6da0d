/** A corner of the box cut level through a groove: what the cut meets, and what becomes of the groove there. */
import type { Design } from '../../box/design/design.ts';
import type { Groove, Part } from '../../box/design/part.ts';
import { type Body, clip } from '../../geometry/convex.ts';
import { sectionOf } from '../../geometry/faces.ts';
import { onSheet, type View } from '../../geometry/view.ts';
import type { Cut } from '../box/SectionPicture.tsx';

/** How much of the box is shown, as a multiple of the wall. */
export const shown = 3.4;

/** From above, so that the corner lies at the lower left: a back corner is turned to look like a front one. */
const views = {
  front: { right: [0, -1, 0], up: [1, 0, 0], into: [0, 0, -1] },
  back: { right: [0, 1, 0], up: [-1, 0, 0], into: [0, 0, -1] },
} as const satisfies Record<string, View>;

export interface Panel {
  readonly of: 'bottom' | 'lid';
  readonly end: 'front' | 'back';
  readonly grooves: readonly Groove[];
  readonly cuts: readonly Cut[];
  readonly corner: readonly [number, number];
  readonly height: number;
}

/** The right corner of an end for the front, the left for the back: on the sheet both lie at the lower right. */
export function panelOf(design: Design, of: 'bottom' | 'lid', end: 'front' | 'back'): Panel | undefined {
  const { plan, grooves, parts } = design;
  if (!plan) return undefined;
  const band = of === 'bottom' ? plan.bottomBand : plan.lidBand;
  if (!(band.depth > 0 && band.high > band.low)) return undefined;
  const side = end === 'front' ? 'left' : 'right';
  const view = views[end];
  const height = (band.low + band.high) / 2;
  const [x, y] = onSheet(view, [end === 'front' ? 0 : plan.length, end === 'front' ? 0 : plan.width, 0]);
  const reach = shown * plan.wall;
  const window: Body = [
    { n: [-1, 0, 0], d: reach - x },
    { n: [0, -1, 0], d: reach - y },
  ];
  const cuts = parts.flatMap((part: Part) =>
    part.pieces.map((piece) => ({
      name: part,
      normal: view.into,
      polygons: sectionOf(piece, 'z', height).flatMap(
        ({ points, drawn }) =>
          clip({ points: points.map((point) => onSheet(view, point)), drawn }, window) ?? [],
      ),
    })),
  );
  return {
    of,
    end,
    cuts,
    corner: [x, y],
    height,
    grooves: grooves.filter((groove) => groove.for === of && [side, end].includes(groove.wall)),
  };
}

/** Whether the groove stops before the corner that is shown. */
export function isStopped({ wall, startOpen, stopOpen }: Groove, end: 'front' | 'back'): boolean {
  // Seen from inside: the left side has the front at its right end, the right side the back; the front has the left side at its left end, the back the right side.
  const atStart = wall === end;
  return atStart ? !startOpen : !stopOpen;
}

/** What happens to the grooves of a corner, in a sentence. */
export const describe = (panel: Panel) => {
  const stopped = panel.grooves.filter((groove) => isStopped(groove, panel.end));
  return stopped.length > 0
    ? `The ${panel.of} groove stops short in the ${stopped.map(({ wall }) => wall).join(' and ')}: cut through, it would leave a hole outside.`
    : `The ${panel.of} groove ends inside the joint: no hole shows.`;
};

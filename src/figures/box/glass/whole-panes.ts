/** The glass over the walls, the inside, the corners, and the box as it is measured. */
import type { View } from '../../../geometry/view.ts';
import { visible } from '../../../geometry/visible.ts';
import type { Cut } from '../SectionPicture.tsx';
import { cutAcross, flat, type Pane, type Planned, rectangle, within } from './pane.ts';

/** The whole box cut across its length. */
const wholeOf = (design: Planned) => {
  const window = [0, -design.plan.height, design.plan.width, 0] as const;
  return { window, cuts: cutAcross(design, window) };
};

export function wallsPane(design: Planned): Pane {
  const { width: W, height: H, wall: t } = design.plan;
  return {
    ...wholeOf(design),
    caption: 'cut across',
    measures: [
      { from: [0, -H], to: [0, 0], away: -12, value: design.values.outsideHeight },
      { from: [0, 0], to: [W, 0], away: 12, value: design.values.outsideWidth },
      { from: [0, -H], to: [t, -H], away: -12, value: design.values.wall },
    ],
    edges: [rectangle(0, 0, t, design.plan.rim), rectangle(W - t, 0, W, design.plan.rim)],
  };
}

export function insidePane(design: Planned): Pane {
  const { values: v, plan } = design;
  const { width: W, wall: t, floor, lidUnder } = plan;
  const left = (W - v.contentsWidth) / 2;
  return {
    ...wholeOf(design),
    caption: 'dashed: contents',
    measures: [
      { from: [t, -lidUnder], to: [t, -floor], away: 14, value: v.insideHeight },
      { from: [t, 0], to: [W - t, 0], away: 12, value: v.insideWidth },
    ],
    edges: [rectangle(t, floor, W - t, lidUnder)],
    dashed: [rectangle(left, floor, left + v.contentsWidth, floor + v.contentsHeight)],
  };
}

const fromLeft: View = { right: [1, 0, 0], up: [0, 0, 1], into: [0, 1, 0] };

/** The corners seen from the left side: of a long box the front one alone. */
export function cornersPane(design: Planned, aspect: number): Pane {
  const { values: v, plan, parts } = design;
  const window = [0, -plan.height, Math.min(plan.length, plan.height * aspect), 0] as const;
  const cuts = visible(
    fromLeft,
    parts
      .filter(({ name }) => /^(lid-)?(front|left|back)$|^(keys|splines)$/.test(name))
      .flatMap((part) => part.pieces.map((solid) => ({ name: part, solid }))),
  ).map((face): Cut => ({ ...face, polygons: within(face.polygons, window) }));
  const width = v.joint === 'finger' ? v.fingerWidth : undefined;
  return {
    caption: 'from the left',
    window,
    cuts,
    measures: [
      { from: [0, -plan.frontTop], to: [0, 0], away: -12, value: plan.frontTop },
      ...(width
        ? [{ from: [plan.wall, -width] as const, to: [plan.wall, 0] as const, away: 12, value: width }]
        : []),
      { from: [0, -plan.height], to: [plan.wall, -plan.height], away: -12, value: v.wall },
    ],
  };
}

/** The walls from above, with both diagonals. */
export function accuracyPane(design: Planned): Pane {
  const { length: L, width: W, wall: t } = design.plan;
  const walls = design.parts.filter(({ name }) => ['front', 'back', 'left', 'right'].includes(name));
  return {
    caption: 'from above',
    note: {
      before: 'diagonals apart ',
      value: design.values.diagonalsRacked,
    },
    window: [0, -W, L, 0],
    cuts: walls.flatMap((part) =>
      part.pieces.slice(0, 1).map(
        ({ block: { x, y } }): Cut => ({
          name: part,
          normal: [0, 0, 1],
          polygons: [flat(x[0], -y[1], x[1], -y[0])],
        }),
      ),
    ),
    measures: [
      { from: [t, 0], to: [L - t, 0], away: 12, value: design.values.insideLength },
      { from: [0, -(W - t)], to: [0, -t], away: -12, value: design.values.insideWidth },
    ],
    dashed: [
      [
        [t, -t],
        [L - t, -(W - t)],
      ],
      [
        [t, -(W - t)],
        [L - t, -t],
      ],
    ],
  };
}

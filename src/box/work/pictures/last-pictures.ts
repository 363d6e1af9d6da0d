/** The surface, and the lid. */
import type { Vector } from '../../../geometry/convex.ts';
import { isSide } from '../../design/grooves.ts';
import { wallNames } from '../../design/part.ts';
import type { Planned } from '../step.ts';
import type { Line, Marked, Scene, Thing } from './scene.ts';
import { outer } from './walls.ts';

interface PieceShown {
  readonly opens: boolean;
  readonly at?: Vector;
  readonly marked?: (name: string) => Marked | undefined;
}

/** The pieces of the finished box that stay, or those that open with the lid. */
const finished = (design: Planned, { opens, at, marked }: PieceShown): Thing[] =>
  design.parts.flatMap((part) =>
    part.pieces
      .filter((piece) => piece.opens === opens)
      .map((solid) => ({ solid, grain: part.grain, at, marked: marked?.(part.name) })),
  );

/** What is seen of the walls from outside: their faces and their ends. */
const outside = (name: string): Marked | undefined => {
  const wall = wallNames.find((one) => name === one || name === `lid-${one}`);
  return (
    wall && { sides: [outer[wall], ...(isSide(wall) ? (['x-', 'x+'] as const) : (['y-', 'y+'] as const))] }
  );
};

export function sawLid(design: Planned): Scene {
  const clear = 0.35 * design.plan.width;
  return {
    shows: 'The lid sawn off the box, both sawn edges marked.',
    things: [
      ...finished(design, { opens: false, marked: () => ({ sides: ['z+'] }) }),
      ...finished(design, { opens: true, at: [0, 0, clear], marked: () => ({ sides: ['z-'] }) }),
    ],
  };
}

/** Lines along the corners that are seen. */
function corners({ plan: { length, width, frontTop, rim } }: Planned): Line[] {
  const seen = [
    [0, 0, frontTop],
    [0, width, frontTop],
    [length, 0, rim],
  ] as const;
  return seen.map(([x, y, up]) => ({
    is: 'mark',
    points: [
      [x, y, 0],
      [x, y, up],
    ],
  }));
}

export const level = (design: Planned): Scene => ({
  shows: 'The glued box, its corners marked.',
  things: [
    ...finished(design, { opens: false, marked: outside }),
    ...(design.box.kind === 'sliding'
      ? []
      : finished(design, { opens: true, at: [0, 0, 0.35 * design.plan.width], marked: outside })),
  ].filter(({ grain }) => grain !== 'across the miter'),
  lines: corners(design),
});

export const finish = (design: Planned): Scene => ({
  shows: 'The box and its lid, the faces that are finished marked.',
  things: [
    ...finished(design, { opens: false, marked: outside }),
    ...finished(design, {
      opens: true,
      at: [0, 0, 0.45 * design.plan.width],
      marked: (name) => (name === 'lid' ? { sides: ['z+', 'z-'] } : outside(name)),
    }),
  ],
});

export const fitLid = (design: Planned): Scene => ({
  shows: 'The lid half out of its grooves, its edges marked.',
  things: [
    ...finished(design, { opens: false }),
    ...finished(design, {
      opens: true,
      at: [-design.plan.length / 2, 0, 0],
      marked: (name) => (name === 'lid' ? { sides: ['y-', 'y+'] } : undefined),
    }),
  ],
});

/** On the edge that turns: where each leaf lies. */
export function hinges(design: Planned): Scene {
  const { plan, hinges: pair } = design;
  const clear = 0.45 * plan.width;
  const onRim = (z: number) =>
    (pair?.places ?? []).map(([from, to]): Line => {
      const isOnSide = pair !== undefined && isSide(pair.wall);
      const at = (run: number): Vector => (isOnSide ? [run, plan.width, z] : [plan.length, run, z]);
      return { is: 'mark', points: [at(from), at(to)] };
    });
  return {
    shows: 'Box and lid, the places of the hinges marked.',
    things: [...finished(design, { opens: false }), ...finished(design, { opens: true, at: [0, 0, clear] })],
    lines: [...onRim(plan.rim), ...onRim(plan.rim + clear)],
    turn: 180,
  };
}

/** Three lines of writing on the floor of the box. */
export function last(design: Planned): Scene {
  const { length, width, floor } = design.plan;
  const line = (share: number, long: number): Line => ({
    is: 'mark',
    points: [
      [(0.5 + share) * length, 0.3 * width, floor],
      [(0.5 + share) * length, (0.3 + long) * width, floor],
    ],
  });
  return {
    shows: 'The open box, its floor marked where date, wood and humidity are written.',
    things: finished(design, {
      opens: false,
      marked: (name) => (name === 'bottom' ? { sides: ['z+'] } : undefined),
    }),
    lines: [line(0.1, 0.4), line(0, 0.3), line(-0.1, 0.35)],
    tip: 20,
  };
}

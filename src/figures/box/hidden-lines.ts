/** What a view of the outside hides and a maker needs: grooves, the inner faces of the walls, the liner. */
import type { Design } from '../../box/design/design.ts';
import type { Axis, Block } from '../../geometry/solid.ts';

type Rectangle = Readonly<Record<Axis, readonly [number, number]>>;

/** A groove's place in the box, from its part's block. */
function groovePlaces({ grooves, parts }: Design): (Rectangle & { wall: string })[] {
  return grooves.flatMap((groove) => {
    const blocks = parts.find(({ name }) => name === groove.part)?.pieces.map(({ block }) => block) ?? [];
    const block = blocks[0];
    if (!block) return [];
    const side = groove.wall === 'left' || groove.wall === 'right';
    const [low, high] = side ? block.x : block.y;
    // Counted from the left end as seen from inside: for the left side and the back that is the far end.
    const turned = groove.wall === 'left' || groove.wall === 'back';
    const run = turned
      ? ([high - groove.stop, high - groove.start] as const)
      : ([low + groove.start, low + groove.stop] as const);
    const [near, far] = side ? block.y : block.x;
    const deep =
      groove.wall === 'left' || groove.wall === 'front'
        ? ([far - groove.depth, far] as const)
        : ([near, near + groove.depth] as const);
    const z = [groove.bottomEdge, groove.bottomEdge + groove.width] as const;
    return [{ wall: groove.wall, x: side ? run : deep, y: side ? deep : run, z }];
  });
}

/** Rectangles whose outlines are hidden when one looks along an axis from outside. */
export function hiddenRectangles(design: Design, into: Axis): readonly Block[] {
  const { plan, parts } = design;
  if (!plan) return [];
  const { length, width, wall, height, frontTop } = plan;
  const whole = { x: [0, length], y: [0, width], z: [0, height] } as const;
  const liner = parts.filter(({ name }) => name.startsWith('liner'));
  const linerBlocks = liner.flatMap(({ pieces }) => pieces.map(({ block }) => block));
  const places = groovePlaces(design);
  const along = (walls: readonly string[]) => places.filter(({ wall: one }) => walls.includes(one));
  if (into === 'y')
    return [
      { ...whole, x: [wall, wall], z: [0, frontTop] },
      { ...whole, x: [length - wall, length - wall] },
      ...along(['left']),
      ...linerBlocks.slice(0, 1).map(({ z }) => ({ ...whole, x: [wall, length - wall] as const, z })),
    ];
  if (into === 'x')
    return [
      { ...whole, y: [wall, wall] },
      { ...whole, y: [width - wall, width - wall] },
      ...along(['front', 'back']),
      ...linerBlocks.slice(0, 1).map(({ z }) => ({ ...whole, y: [wall, width - wall] as const, z })),
    ];
  const { bottomBand, lidBand } = plan;
  const sliding = plan.values.kind === 'sliding';
  const grooves = [bottomBand, lidBand]
    .filter(({ depth }) => depth > 0)
    .map((band): Block => {
      const edge = wall - band.depth;
      const open = band.for === 'lid' && sliding;
      return { ...whole, x: [open ? 0 : edge, length - edge], y: [edge, width - edge] };
    });
  // A sliding lid lies over the front.
  return sliding ? [...grooves, { ...whole, x: [wall, wall], y: [wall, width - wall] }] : grooves;
}

/** Bottom, lid and what belongs to them, before the glue-up. */
import type { Block } from '../../../geometry/solid.ts';
import type { Planned } from '../step.ts';
import { blockOf, type Marked, partOf, type Scene, type Side, type Thing, thingsOf } from './scene.ts';

const edges: readonly Side[] = ['x-', 'x+', 'y-', 'y+'];
const faces: Marked = { sides: ['z-', 'z+'] };
const sizeOf = ({ x, y, z }: Block) => [x[1] - x[0], y[1] - y[0], z[1] - z[0]] as const;

export function bottomThickness(design: Planned): Scene {
  const [x, y, z] = sizeOf(partOf(design, 'bottom')!.pieces[0]!.block);
  const off = Math.max(0.3, design.box.planing);
  const shaving = (up: number): Thing => ({
    solid: blockOf(x, y, off),
    grain: 'x',
    at: [0, 0, up],
    waste: true,
  });
  const clear = 0.12 * y;
  return {
    shows: 'The panel for the bottom, what is planed off both faces drawn beside it.',
    things: [
      shaving(-clear - off),
      { solid: blockOf(x, y, z), grain: 'x', marked: faces },
      shaving(z + clear),
    ],
    tip: -12,
  };
}

/** On its upper face, where its tongue is rabbeted underneath. */
export function bottom(design: Planned): Scene {
  const part = partOf(design, 'bottom')!;
  const hasTongue = part.pieces.some(({ cuts }) => cuts.length > 0);
  const things = thingsOf(design, part, { marked: { cuts: ['tongue'], sides: edges } });
  return {
    shows: hasTongue
      ? 'The bottom upside down, its edges and the rabbet for its tongue marked.'
      : 'The bottom, its edges marked.',
    things: hasTongue ? things.map((thing) => ({ ...thing, upsideDown: true })) : things,
  };
}

export const lidPanel = (design: Planned): Scene => ({
  shows: 'The lid panel, its edges marked.',
  things: thingsOf(design, partOf(design, 'lid'), { marked: { sides: edges } }),
});

export function panelFinish(design: Planned): Scene {
  const { box, plan } = design;
  const lid = box.kind === 'sliding' ? undefined : partOf(design, 'lid');
  return {
    shows: `The ${lid ? 'panels' : 'bottom'}, both faces marked.`,
    things: [
      ...thingsOf(design, partOf(design, 'bottom'), { marked: faces }),
      ...thingsOf(design, lid, { marked: faces, at: [0, 0, 0.3 * plan.width - plan.lidUnder] }),
    ],
  };
}

/** Cut to length; its width waits. */
export const lid = (design: Planned): Scene => ({
  shows: 'The lid, its ends marked.',
  things: thingsOf(design, partOf(design, 'lid'), { marked: { sides: ['x-', 'x+'] }, without: ['grip'] }),
});

export const grip = (design: Planned): Scene => ({
  shows: `The lid, its ${design.box.pull === 'hole' ? 'finger hole' : 'thumb notch'} marked.`,
  things: thingsOf(design, partOf(design, 'lid'), { marked: { cuts: ['grip'] } }),
});

export function pull(design: Planned): Scene {
  const part = partOf(design, 'pull')!;
  return {
    shows: 'The lid, its pull above the place where it is glued.',
    things: [
      ...thingsOf(design, partOf(design, 'lid')),
      ...thingsOf(design, part, { at: [0, 0, 2 * part.finished.width], marked: 'all' }),
    ],
  };
}

/** Which part of the bench each check judges. */
import { type PartOfBench, partsOfBench } from './parts.ts';

/** Ids of the checks that judge each part. */
export const checksOfParts: Readonly<Record<PartOfBench, readonly string[]>> = {
  inside: [
    'design-from-the-inside',
    'design-from-the-inside-above',
    'linings-and-dividers-first',
    'outside-is-inside-plus-two-walls',
    'walls-cost-inside-volume',
  ],
  walls: ['wall-thickness', 'simple-ratio', 'height-from-width'],
  corners: [
    'finger-width',
    'finger-width-tail',
    'finger-width-tail-lid',
    'half-pins',
    'half-pins-tails',
    'dovetail-slope',
    'keys-and-splines',
    'odd-finger-count',
    'odd-finger-count-lid',
    'no-sliver-at-the-edge',
    'no-sliver-at-the-edge-lid',
    'front-ends-with-a-finger',
    'finger-fit',
    'long-grain-to-long-grain',
  ],
  grooves: [
    'lip-beside-lid-groove',
    'lip-beside-lid-groove-push',
    'lip-below-bottom-groove',
    'lip-below-bottom-groove-push',
    'groove-depth',
    'groove-depth-lid',
    'groove-inside-one-finger',
  ],
  bottom: [
    'bottom-thickness',
    'bottom-thickness-plywood',
    'gap-beside-the-bottom',
    'gap-beside-the-bottom-central',
    'gap-beside-the-bottom-crept',
    'solid-floats-plywood-may-be-glued',
  ],
  lid: [
    'quarter-sawn-for-lids',
    'lid-clearance',
    'lid-engagement',
    'pull-in-the-middle',
    'long-lids-run-short-ones-jam',
    'lid-line',
    'lift-off-fit',
    'lift-off-fit-rise',
    'no-finish-on-running-surfaces',
  ],
  air: ['low-movement-wood-first', 'build-in-the-middle', 'write-the-humidity', 'thickness-squared'],
  board: ['cut-oversize-and-rest', 'resaw-stock', 'board-length', 'walk-round-order'],
  accuracy: ['check-blade-and-fence', 'step-error-adds-up', 'opposite-walls-from-one-stop', 'diagonals', 'twist'],
};

/** The part that a check judges. */
export const partOfCheck = (id: string): PartOfBench =>
  partsOfBench.find((part) => checksOfParts[part].includes(id)) ?? 'inside';

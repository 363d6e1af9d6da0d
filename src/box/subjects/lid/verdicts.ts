/** Checks on the run of a sliding lid, and on the lid line of the others. */
import type { Check } from '../../core/verdict.ts';
import type { LidValues } from './results.ts';

const open = Number.POSITIVE_INFINITY;

/** Both look at the same length against two pulls: the reader's own, and the worst there is. */
const halfOpen = {
  kind: 'length',
  applies: (v: LidValues) => v.kind === 'sliding',
  of: 'lidHeldHalfOpen',
} as const;

export const lidChecks: readonly Check<LidValues>[] = [
  {
    ...halfOpen,
    id: 'pull-in-the-middle',
    rule: 'pull-in-the-middle',
    label: 'half-open lid in its grooves, pulled where you pull',
    // At twice the jam length the drag has doubled; to call that the limit is this notebook's choice.
    usual: (v) => [2 * v.jamLength, open],
    works: (v) => [v.jamLength, open],
    says: {
      low: 'So far off the middle it drags twice as hard or more; at half this limit it jams, however hard you pull.',
      breaks: 'So far off the middle it jams, however hard you pull.',
      high: '',
      inside: 'Long enough in its grooves to run straight.',
    },
  },
  {
    ...halfOpen,
    id: 'long-lids-run-short-ones-jam',
    rule: 'long-lids-run-short-ones-jam',
    label: 'half-open lid in its grooves, pulled at its edge',
    usual: (v) => [v.jamLengthAtEdge, open],
    says: {
      low: 'Pulled at its edge it jams before it is half open. It needs a pull in the middle, or wax.',
      high: '',
      inside: 'Even pulled at its edge it opens half way.',
    },
  },
  {
    id: 'lid-line',
    rule: 'lid-line',
    label: 'lid’s share of the height',
    kind: 'ratio',
    digits: 2,
    applies: (v) => v.kind !== 'sliding',
    of: 'lidShare',
    usual: [1 / 5, 2 / 5],
    says: {
      low: 'A thin lid: hinge screws and a lip find little wood in its walls.',
      high: 'A lid so high looks like a second box on the first. Nothing breaks.',
      inside: 'The lid line lies where most makers put it, and the heavier part is below.',
    },
  },
  {
    id: 'lift-off-fit',
    rule: 'lift-off-fit',
    label: 'room around the liner, each side',
    kind: 'length',
    as: 'fine',
    applies: (v) => v.kind === 'lift-off',
    of: 'lidRoom',
    usual: { mm: [0.25, 0.4], inch: [0.01, 0.016] },
    works: () => [0, open],
    says: {
      low: 'Close on the bare wood: three coats of finish would make it stick.',
      high: 'More room than usual: the lid sits loose on its liner.',
      inside: 'Room for a finish and for dust, and the lid still finds its place.',
    },
  },
  {
    id: 'lift-off-fit-rise',
    rule: 'lift-off-fit',
    label: 'liner above the box',
    kind: 'length',
    applies: (v) => v.kind === 'lift-off',
    of: 'linerRise',
    usual: { mm: [3, 6], inch: [1 / 8, 1 / 4] },
    says: {
      low: 'So low a liner lets a knock push the lid off.',
      high: 'So high a liner must be lifted off straight, or the lid catches.',
      inside: 'High enough to hold the lid, low enough to let it go.',
    },
  },
];

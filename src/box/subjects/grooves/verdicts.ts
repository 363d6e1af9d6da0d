/** Checks that the lesson on groove margins teaches. */
import { type Check, eitherWay, type NativeRange } from '../../core/verdict.ts';
import type { GroovesValues } from './results.ts';

const open = Number.POSITIVE_INFINITY;
const lipBelow: NativeRange = { mm: [5, 12], inch: [3 / 16, 1 / 2] };

const hasBottomGroove = (v: GroovesValues) => v.bottomSeat === 'groove';

/** The push a lip takes against the push the reader expects. */
const push = (
  rule: string,
  label: string,
  hasGroove: (v: GroovesValues) => boolean,
  of: 'lidLipPush' | 'bottomLipPush',
): Check<GroovesValues> => ({
  id: `${rule}-push`,
  rule,
  label,
  kind: 'force',
  applies: hasGroove,
  unknown: 'The tables have no strength across the grain for this wood, so what its lip takes is not known.',
  of,
  usual: (v) => [v.push, open],
  says: {
    low: 'Your push, at one place, could split this lip off: leave more wood, or a shallower groove.',
    high: 'It takes your push.',
    inside: 'It takes your push in sound wood; a real lip may have half or a third of that.',
  },
});

/** Depth of one groove as a share of the wall. */
const depth = (
  id: string,
  label: string,
  hasGroove: (v: GroovesValues) => boolean,
  of: 'bottomGrooveShare' | 'lidGrooveShare',
): Check<GroovesValues> => ({
  id,
  rule: 'groove-depth',
  label,
  kind: 'percent',
  applies: hasGroove,
  of,
  usual: [100 / 3, 50],
  works: () => [0, 50],
  says: {
    low: 'Shallow: a strong wall, but see that a solid panel cannot shrink out of it.',
    high: 'Over half: less than a quarter of the strength is left, and the wall may split along the groove.',
    inside: 'Between a third and a half of the wall: the panel holds and the web is left.',
  },
});

export const groovesChecks: readonly Check<GroovesValues>[] = [
  {
    id: 'lip-beside-lid-groove',
    rule: 'lip-beside-lid-groove',
    label: 'wood above the lid’s groove',
    kind: 'length',
    of: 'lidLip',
    usual: { mm: [3.2, 6], inch: [1 / 8, 1 / 4] },
    says: {
      low: 'Thinner than custom has it: a knock or a thumb can split it off along the grain.',
      high: 'More than it needs: strong, but it looks heavy and hides the lid.',
      inside: 'As custom has it. Whether this wood takes your push at that thickness is judged beside it.',
    },
  },
  push('lip-beside-lid-groove', 'push the lid’s lip takes', () => true, 'lidLipPush'),
  {
    id: 'lip-below-bottom-groove',
    rule: 'lip-below-bottom-groove',
    label: 'wood below the bottom’s groove',
    kind: 'length',
    applies: hasBottomGroove,
    of: 'bottomLip',
    declares: lipBelow,
    usual: (v) => [Math.max(eitherWay(lipBelow)[0], v.grooveDepth), eitherWay(lipBelow)[1]],
    says: {
      low: 'Thin: this strip carries the bottom and can only fail one way, along the grain.',
      high: 'More than it needs: it costs inside height.',
      inside: 'At least as thick as the groove is deep, and enough for a dropped box.',
    },
  },
  push('lip-below-bottom-groove', 'push the bottom’s lip takes', hasBottomGroove, 'bottomLipPush'),
  depth(
    'groove-depth',
    'depth of the bottom’s groove, share of the wall',
    hasBottomGroove,
    'bottomGrooveShare',
  ),
  depth('groove-depth-lid', 'depth of the lid’s groove, share of the wall', () => true, 'lidGrooveShare'),
  {
    id: 'groove-inside-one-finger',
    rule: 'groove-inside-one-finger',
    label: 'finger left above the bottom’s groove',
    kind: 'length',
    applies: (v) => v.joint === 'finger' && hasBottomGroove(v),
    of: 'fingerAboveGroove',
    usual: () => [0, open],
    says: {
      low: 'The groove runs into the next finger: it shows on both pairs of walls, so all four need a stop.',
      high: 'The groove lies inside one finger.',
      inside: 'The groove lies inside one finger: stop it in that pair of walls and no hole shows.',
    },
  },
];

/** Checks on tails, pins and keys, taught by the lesson on corner joints. Ranges are common practice. */
import { type Check, eitherWay, type NativeRange } from '../../core/verdict.ts';
import type { JointsValues } from './results.ts';

const open = Number.POSITIVE_INFINITY;
/** As wide as the narrowest chisel in common use. */
const leastPin: NativeRange = { mm: [3, open], inch: [1 / 8, open] };
/** One key for so much height. */
const perKey: NativeRange = { mm: [25, 40], inch: [1, 3 / 2] };

const isDovetail = (v: JointsValues) => v.joint === 'dovetail';

export const tailsAndKeysChecks: readonly Check<JointsValues>[] = [
  {
    id: 'half-pins',
    rule: 'half-pins',
    label: 'width of a pin at its narrow side',
    kind: 'length',
    applies: isDovetail,
    of: 'pinWidth',
    usual: leastPin,
    says: {
      low: 'Narrower than the narrowest chisel: the socket for it can be sawn but hardly cleared, and the half pins at the edges are half of it.',
      high: '',
      inside: 'Wide enough for a chisel to clear the socket.',
    },
  },
  {
    id: 'half-pins-tails',
    rule: 'half-pins',
    label: 'tail to pin, where the pin is narrowest',
    kind: 'number',
    digits: 1,
    applies: isDovetail,
    of: 'tailPerPin',
    usual: [2, 3],
    says: {
      low: 'Tails and pins nearly alike: sound, and it looks like machine work.',
      high: 'Slim pins beside wide tails: elegant, but few cheeks for the height, and thin half pins at the edges. One more tail brings it back.',
      inside: 'Tails two to three times as wide as the pins.',
    },
  },
  {
    id: 'dovetail-slope',
    rule: 'dovetail-slope',
    label: 'slope, length to one of width',
    kind: 'number',
    applies: isDovetail,
    of: 'dovetailSlope',
    usual: [5, 8],
    says: {
      low: 'Steeper than 1 in 5: the corners of the tails are short grain and chip off.',
      high: 'Flatter than 1 in 8: the tails hardly wedge, and the joint looks like fingers.',
      inside: 'It wedges, and the corners of the tails are strong enough to cut.',
    },
  },
  {
    id: 'keys-and-splines',
    rule: 'keys-and-splines',
    label: 'height of the corner for one key',
    kind: 'length',
    applies: (v) => v.joint === 'keyed-mitre',
    of: 'keySpacing',
    declares: perKey,
    // Two at least, however low the box is; then more may be closer than the low end.
    usual: (v) => {
      const [least, most] = eitherWay(perKey);
      const forTwo = v.jointedHeight / 2;
      return [Math.min(least, forTwo), Math.min(most, forTwo)];
    },
    says: {
      low: 'More keys than usual: nothing breaks, but each slot is one more cut into a finished corner.',
      high: 'A long stretch of plain miter for one key. Two keys are the least, one near each edge.',
      inside: 'Every stretch of the miter has a key near by.',
    },
  },
];

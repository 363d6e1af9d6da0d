/** The bottom and its seat. mm. */
import { choice, gap, size } from '../../core/inputs.ts';

export const bottomInputs = {
  bottom: choice('bottom', { solid: 'solid wood', plywood: 'plywood' }, 'solid'),
  bottomFit: choice('the bottom is', { floating: 'floating', glued: 'glued in' }, 'floating', {
    when: [{ bottom: ['plywood'] }],
  }),
  bottomSeat: choice('the bottom sits in', { groove: 'a groove', rabbet: 'a rabbet (rebate)' }, 'groove'),
  bottomThickness: size('bottom thickness', { low: 2, high: 20, start: { mm: 6, inch: 1 / 4 } }),
  /** Thickness of the bottom's edge where it enters the groove; the rest is rabbeted away underneath. */
  bottomTongue: size('edge of the bottom in its groove', {
    low: 2,
    high: 20,
    start: { mm: 4, inch: 3 / 16 },
    when: [{ bottomSeat: ['groove'] }],
  }),
  /** Wood left between the bottom's groove and the lower edge of the wall. */
  bottomLip: size('wood below the bottom groove', {
    low: 0.5,
    high: 25,
    start: { mm: 9, inch: 3 / 8 },
  }),
  grooveDepth: size('depth of the bottom groove', {
    low: 1,
    high: 15,
    start: { mm: 4, inch: 5 / 32 },
  }),
  /** Gap left today at each side of a floating bottom, panel held central. */
  bottomGap: gap('gap at each side of the bottom', {
    low: 0,
    high: 5,
    start: { mm: 0.6, inch: 3 / 128 },
    when: [{ bottom: ['solid'] }, { bottomFit: ['floating'] }],
  }),
};

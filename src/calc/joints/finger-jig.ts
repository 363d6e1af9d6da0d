/**
 * The setting of a finger jig that keeps the pitch, so that the layout does not drift however loose the fit is.
 *
 *   pitch = slot + finger = 2 f        slot − finger = c        slot = f + c/2        finger = f − c/2
 *
 * Symbols: f finger width with its share of play, half the pitch, c slot minus finger; mm. The jig steps by cutter plus
 * distance from cutter to pin, which is one slot and one finger.
 */
import { relation } from '../core/relation.ts';

/** Width of the cutter, and of the jig's pin, that makes slots of that pitch, mm. */
export const slotWidth = relation({
  id: 'slot-width',
  title: 'Width of a slot, which is the cutter’s',
  result: { symbol: 'w_s', name: 'width of a slot', unit: 'mm' },
  inputs: {
    f: { name: 'finger width, half the pitch', unit: 'mm', range: [1, 60] },
    c: { name: 'slot minus finger', unit: 'mm', range: [0, 1] },
  },
  expression: 'f + c / 2',
  compute: ({ f, c }) => f + c / 2,
  evidence: 'geometry',
  source: 'Slot and finger together are the pitch, 2 f, and differ by the play.',
});

/** Distance from cutter to pin, mm: the width of a finger. Cutter and this distance together are the pitch. */
export const cutterToPin = relation({
  id: 'cutter-to-pin',
  title: 'Distance from cutter to pin',
  result: { symbol: 'd_p', name: 'cutter to pin', unit: 'mm' },
  inputs: {
    f: { name: 'finger width, half the pitch', unit: 'mm', range: [1, 60] },
    c: { name: 'slot minus finger', unit: 'mm', range: [0, 1] },
  },
  expression: 'f - c / 2',
  compute: ({ f, c }) => f - c / 2,
  evidence: 'geometry',
  source: 'Slot and finger together are the pitch, 2 f, and differ by the play.',
});

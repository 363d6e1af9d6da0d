/**
 * A box that moves to other air: the panel goes from the moisture of one house to that of another, and stays there.
 *
 *   play after  p₂ = p + W C (M_1 − M_2)     held central  g − p₂/2     held at the worse side, crept  g − p₂
 *
 * Symbols: W width of panel or lid before the move (mm), C its movement per 1 % MC, M_1 and M_2 moisture of its wood,
 * settled before and after (%), p play before, both sides together (mm), g groove depth (mm).
 * Held fixed: the grooves, because walls do not change length. Right after a move the wood is not there yet: these hold
 * once it has settled. C is the printed coefficient from 6 to 14 % MC, else the one from the total shrinkage at M_1.
 */
import { relation } from '../core/relation.ts';

const inputs = {
  p: { name: 'play before the move in all', unit: 'mm', range: [0, 20] },
  W: { name: 'width across the grain', unit: 'mm', range: [10, 600] },
  C: { name: 'movement per 1 % moisture content', unit: '1', range: [0.0001, 0.006] },
  M_1: { name: 'moisture content before', unit: '%', range: [0, 30] },
  M_2: { name: 'moisture content after', unit: '%', range: [0, 30] },
} as const;
const g = { name: 'groove depth', unit: 'mm', range: [1, 20] } as const;
const derived = {
  evidence: 'derived',
  source: 'The coefficient method between two moistures that the wood has settled to.',
  limits:
    'Holds once the wood has settled. The movement per point must hold for both moisture contents: the printed coefficient does from 6 to 14 %, the one taken from the total shrinkage from 0 to 30 %.',
} as const;

/** Play, mm, both sides together, once the panel has settled after a move; below zero it presses on its grooves. */
export const playAfterMove = relation({
  id: 'play-after-a-move',
  title: 'Play after a move to other air',
  result: { symbol: 'p_2', name: 'play after the move in all', unit: 'mm' },
  inputs,
  expression: 'p + W * C * (M_1 - M_2)',
  compute: ({ p, W, C, M_1, M_2 }) => p + W * C * (M_1 - M_2),
  ...derived,
});

/** What each groove still holds, mm, once a panel that is held in the middle has settled. */
export const heldAfterMoveCentral = relation({
  id: 'held-after-a-move-central',
  title: 'Held after a move, panel in the middle',
  result: { symbol: 'E', name: 'held at each side', unit: 'mm' },
  inputs: { g, ...inputs },
  expression: 'g - (p + W * C * (M_1 - M_2)) / 2',
  compute: ({ g, p, W, C, M_1, M_2 }) => g - (p + W * C * (M_1 - M_2)) / 2,
  ...derived,
});

/** What the worse groove still holds, mm, once a panel that has crept to the other side has settled; below zero it is out. */
export const heldAfterMoveCrept = relation({
  id: 'held-after-a-move-crept',
  title: 'Held after a move, crept to one side',
  result: { symbol: 'E', name: 'held at the worse side', unit: 'mm' },
  inputs: { g, ...inputs },
  expression: 'g - (p + W * C * (M_1 - M_2))',
  compute: ({ g, p, W, C, M_1, M_2 }) => g - (p + W * C * (M_1 - M_2)),
  ...derived,
});

/** Checks on the thickness of the bottom, taught by the lesson on wall thickness and size. */
import { INCH } from '../../../units/index.ts';
import { type Check, eitherWay, type NativeRange } from '../../core/verdict.ts';
import type { BottomValues } from './results.ts';

/** A plywood bottom beyond this span is taken thicker, mm (8 in). */
const longPlywoodSpan = 8 * INCH;
const plywood: NativeRange = { mm: [3, 6], inch: [1 / 8, 1 / 4] };
const span = (v: BottomValues) => Math.min(v.insideLength, v.insideWidth);

export const bottomChecks: readonly Check<BottomValues>[] = [
  {
    id: 'bottom-thickness',
    rule: 'bottom-thickness',
    label: 'thickness of the solid bottom',
    kind: 'length',
    applies: (v) => v.bottom === 'solid',
    of: 'bottomThickness',
    usual: { mm: [6, 8], inch: [1 / 4, 5 / 16] },
    says: {
      low: 'Under 6 mm (1/4 in) a solid bottom drums when tapped and gives under a finger.',
      high: 'Thicker than usual: sound, but it costs height and weight.',
      inside: 'Taps dull and short, and leaves wood for a thinned edge.',
    },
  },
  {
    id: 'bottom-thickness-plywood',
    rule: 'bottom-thickness',
    label: 'thickness of the plywood bottom',
    kind: 'length',
    applies: (v) => v.bottom === 'plywood',
    of: 'bottomThickness',
    // Thin for a short span, 6 mm (1/4 in) beyond; a glued bottom may be 6 mm on any box.
    declares: plywood,
    usual: (v) => (span(v) > longPlywoodSpan ? [6, eitherWay(plywood)[1]] : eitherWay(plywood)),
    says: {
      low: 'Thin for this span: it drums and gives.',
      high: 'Thicker than usual: sound, but it costs height.',
      inside: 'Thick enough for this span.',
    },
  },
];

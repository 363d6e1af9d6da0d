/** Checks that the lesson on wall thickness and size teaches. */
import { thickestBand, thinnestBand } from '../../../calc/walls/walls.ts';
import { INCH } from '../../../units/index.ts';
import type { Values } from '../../core/values.ts';
import { type Check, eitherWay, type NativeRange } from '../../core/verdict.ts';

/** A plywood bottom beyond this span is taken thicker, mm (8 in). */
const longPlywoodSpan = 8 * INCH;
const plywood: NativeRange = { mm: [3, 6], inch: [1 / 8, 1 / 4] };
const span = (v: Values) => Math.min(v.insideLength, v.insideWidth);

export const wallsChecks: readonly Check[] = [
  {
    id: 'wall-thickness',
    rule: 'wall-thickness',
    label: 'wall thickness',
    kind: 'length',
    measure: (v) => v.wall,
    declares: { mm: [thinnestBand.a, thickestBand.b], inch: [1 / 4, 1 / 2] },
    usual: (v) => [v.thinnestUsualWall, v.thickestUsualWall],
    says: {
      low: 'Thin for this size: a side gives under the thumb, and grooves and joints leave little wood.',
      high: 'Thick for this size: the box looks heavy and loses inside room.',
      inside: 'Stiff enough for the hand, and still light for a box of this size.',
    },
  },
  {
    id: 'walls-cost-inside-volume',
    rule: 'walls-cost-inside-volume',
    label: 'room the walls leave around the contents',
    kind: 'length',
    measure: (v) =>
      Math.min(
        v.clearLength - v.contentsLength,
        v.clearWidth - v.contentsWidth,
        v.insideHeight - v.contentsHeight,
      ),
    usual: () => [0, Number.POSITIVE_INFINITY],
    works: () => [0, Number.POSITIVE_INFINITY],
    says: {
      low: 'The contents do not go in: take two walls off the outside before you promise the inside.',
      high: '',
      inside: 'The contents go in.',
    },
  },
  {
    id: 'bottom-thickness',
    rule: 'bottom-thickness',
    label: 'thickness of the solid bottom',
    kind: 'length',
    applies: (v) => v.bottom === 'solid',
    measure: (v) => v.bottomThickness,
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
    measure: (v) => v.bottomThickness,
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

/** The lid of each kind of box, and its grooves. mm. */
import { choice, fine, gap, length, number, size } from '../../core/inputs.ts';

const sliding = [{ kind: ['sliding'] }];
const liftOff = [{ kind: ['lift-off'] }];

export const lidInputs = {
  lid: choice('lid panel', { solid: 'solid wood', plywood: 'plywood' }, 'solid'),
  /** A thumb notch cut in the lid, a pull glued across its end, or a finger hole bored through it. */
  pull: choice(
    'pull',
    {
      notch: 'a thumb notch',
      glued: 'a strip glued across the end',
      hole: 'a finger hole bored through the lid',
    },
    'notch',
    { when: sliding },
  ),
  /** How far a glued pull reaches along the lid. */
  pullThickness: size('thickness of the pull, along the lid', {
    low: 3,
    high: 20,
    start: { mm: 6, inch: 1 / 4 },
    when: [{ kind: ['sliding'], pull: ['glued'] }],
  }),
  /** Thickness of the lid's panel, and the width of its groove. */
  lidThickness: size('lid thickness', { low: 3, high: 15, start: { mm: 4.5, inch: 3 / 16 } }),
  /** Wood left between the lid's groove and the upper edge of the wall. */
  lidLip: size('wood above the lid groove', { low: 0.5, high: 25, start: { mm: 3.5, inch: 1 / 8 } }),
  lidGrooveDepth: size('depth of the lid groove', { low: 1, high: 15, start: { mm: 4, inch: 5 / 32 } }),
  /** Play left today beside a sliding lid, both sides together. */
  lidPlay: gap('play of the lid, both sides together', {
    low: 0,
    high: 10,
    start: { mm: 1.2, inch: 3 / 64 },
    when: sliding,
  }),
  /** Friction of a sliding lid on its grooves, a pure number, and how far from the lid's middle it is pulled. */
  friction: number('friction of the lid', 'number', {
    low: 0.1,
    high: 0.8,
    step: 0.02,
    digits: 2,
    start: 0.46,
    when: sliding,
    help: 'Chestnut on chestnut, at rest: 0.46 (Villar-García 2020, seen in the abstract). Waxed: about 0.2§.',
  }),
  pullOffset: length('pull, off the middle of the lid', {
    low: 0,
    high: 200,
    start: { mm: 10, inch: 3 / 8 },
    when: sliding,
  }),
  /** Lift-off and sawn lids: height of the lid's walls, and how far a liner stands up above the box. */
  lidHeight: size('height of the lid’s walls', {
    low: 5,
    high: 100,
    start: { mm: 20, inch: 3 / 4 },
    when: [{ kind: ['lift-off', 'sawn'] }],
  }),
  linerRise: size('liner above the box', {
    low: 1,
    high: 30,
    start: { mm: 5, inch: 3 / 16 },
    when: liftOff,
  }),
  linerThickness: size('liner thickness', {
    low: 2,
    high: 10,
    start: { mm: 4, inch: 5 / 32 },
    when: liftOff,
  }),
  /** Room between a lift-off lid and its liner, on each side. */
  lidRoom: fine('room around the liner, each side', {
    low: 0,
    high: 2,
    step: 0.05,
    start: { mm: 0.3, inch: 0.012 },
    when: liftOff,
  }),
  /** Hinges: length of one leaf along the back. */
  hingeLength: length('length of a hinge', {
    low: 8,
    high: 80,
    start: { mm: 25, inch: 1 },
    when: [{ kind: ['sawn'] }],
  }),
};

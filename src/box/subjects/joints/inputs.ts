/** The corners. mm. */
import { choice, count, fine, number, size } from '../../core/inputs.ts';

const fingers = [{ joint: ['finger'] }];
const tails = [{ joint: ['dovetail'] }];

export const jointsInputs = {
  joint: choice(
    'corner joint',
    {
      finger: 'finger joint (box joint)',
      dovetail: 'through dovetail',
      mitre: 'plain miter (mitre)',
      'keyed-mitre': 'miter with keys',
      'splined-mitre': 'miter with a spline',
      rabbet: 'rabbet (rebate)',
      butt: 'butt joint',
    },
    'finger',
  ),
  /** Width of one finger with its share of play: half the pitch. */
  fingerWidth: size('finger width', {
    low: 2,
    high: 25,
    start: { mm: 8, inch: 5 / 16 },
    when: fingers,
    help: 'Half the pitch: a slot and a finger together are twice this. The cutter is wider than this by half the play; the build sheet gives it.',
  }),
  /** Slot minus finger. */
  fingerFit: fine('slot minus finger', {
    low: 0,
    high: 0.5,
    start: { mm: 0.1, inch: 0.004 },
    when: fingers,
  }),
  /** Tails on each end of a long wall, length of slope to one of width, width of a full pin at its narrow side. */
  tailCount: count('tails on each corner', { low: 1, high: 12, start: 2, when: tails }),
  dovetailSlope: number('dovetail slope, length to one of width', 'number', {
    low: 3,
    high: 12,
    step: 1,
    start: 7,
    when: tails,
  }),
  pinWidth: size('width of a pin at its narrow side', {
    low: 2,
    high: 20,
    start: { mm: 5, inch: 3 / 16 },
    when: tails,
  }),
  /** Keys or splines in a miter: how many, how thick. */
  keyCount: count('keys in each corner', { low: 1, high: 8, start: 2, when: [{ joint: ['keyed-mitre'] }] }),
  keyThickness: size('key thickness', {
    low: 1,
    high: 6,
    start: { mm: 3, inch: 1 / 8 },
    when: [{ joint: ['keyed-mitre', 'splined-mitre'] }],
  }),
};

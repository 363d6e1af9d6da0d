/** E5: the width of a sliding lid between its grooves. Running room of 0.3 mm, 0.012 in: common practice. */

import { playToday } from '../../calc/movement/panel.ts';
import { widthBesidePlay } from '../../calc/movement/panel-play.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exact, fine, native, slip, step, writer } from '../core/make.ts';
import {
  changeOf,
  changeSlips,
  changeWay,
  drawSwelling,
  givenPiece,
  nearChange,
  stepsToPoints,
  swells,
} from './swelling.ts';
import { moistureTable, perPoint, pointsBetween } from './wood-and-air.ts';

export const e5 = exercise({
  id: 'e5',
  title: 'Width of a sliding lid',
  about: 'How wide must the lid be so that it still runs in damp air?',
  lesson: 'a-lid-that-runs',
  rules: ['lid-clearance', 'quarter-sawn-for-lids'],
  draw: drawSwelling,
  fits: swells,
  pose: (piece, system) => {
    const w = writer(system);
    const { wood, cut, width: between, from, to } = piece;
    const room = native(system, 0.3, 0.012);
    const swelling = changeOf(piece);
    const play = playToday.compute({
      W: between,
      C: perPoint(wood, cut).own,
      u: pointsBetween(from, to),
      c: room,
    });
    // Half of 1/64 in, so that the nearest mark of a rule is right.
    const within = native(system, 0.15, 1 / 128);
    const lidFor = (p: number) => widthBesidePlay.compute({ B: between, p });
    /** Marks of a rule that a gap is usually rounded to. */
    const mark = native(system, 0.5, 1 / 32);
    return {
      given: [
        ...givenPiece(piece, system, [
          'From groove bottom to groove bottom',
          'Length of the lid, along the grain',
          'Air while you build',
          'Dampest air it will meet',
        ]),
        { label: 'Room to run that is left then', text: w(room, exact) },
      ],
      table: moistureTable,
      question: 'How wide do you cut the lid?',
      lines: [
        ...stepsToPoints(piece),
        step(
          changeWay(piece, system, 'width between the grooves'),
          'swelling',
          swelling,
          nearChange(system),
          fine,
          changeSlips(piece),
        ),
        step(
          [
            'runningRoom',
            'Add the room to run: this is the play to leave today.',
            `${w(swelling, exact)} + ${w(room, exact)}`,
          ],
          'play today',
          play,
          native(system, 0.1, 0.004),
          fine,
          [
            slip(
              'no-room',
              swelling,
              'The lid would touch both sides on the dampest day. Add the room to run.',
            ),
          ],
        ),
        ask(
          [
            'runningRoom',
            'Take the play from the width between the grooves.',
            `${w(between)} − ${w(play, exact)}`,
          ],
          {
            label: 'width of the lid',
            key: lidFor(play),
            within,
            print: { ...exact, round: 'down' },
            mistakes: [
              slip(
                'rounded-down',
                lidFor(Math.floor(play / mark + 1e-9) * mark),
                'You rounded the play down to a mark of the rule, so the lid is too wide. A gap is rounded up, a lid down.',
              ),
              slip(
                'no-room',
                lidFor(swelling),
                'The play lacks the room to run: on the dampest day the lid would touch both sides.',
              ),
              slip(
                'no-swelling',
                lidFor(room),
                'You left only the room to run. The lid will swell as well: add that to the play.',
              ),
              slip(
                'no-play',
                between,
                'This lid fills the grooves today. Take off what it will swell, and the room to run.',
              ),
              slip(
                'play-added',
                lidFor(-play),
                'You added the play. The lid must be narrower than the grooves are apart.',
              ),
              ...changeSlips(piece, (swell) => lidFor(swell + room)),
            ],
          },
        ),
      ],
    };
  },
});

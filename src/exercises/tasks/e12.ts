/**
 * E12: a box moves to other air. How much a panel changes, what that does, and what helps; the reason in words is for the
 * teacher. Coefficients and air: Wood Handbook; the cures are common practice.
 */

import { exercise } from '../core/exercise.ts';
import { ask, choose, exact, fine, inches, native, writer } from '../core/make.ts';
import { changeOf, changeSlips, changeWay, givenPiece, nearChange, stepsToPoints } from './swelling.ts';
import { cuts, moistureTable, woodIds } from './wood-and-air.ts';

type Part = 'lid' | 'glued';

/** What a change of width (growth positive) does to a lid with this play today, or to a bottom glued in all round. */
const outcomeOf = (part: Part, change: number): 'jams' | 'loose' | 'cracks' | 'bursts' =>
  part === 'lid' ? (change > 0 ? 'jams' : 'loose') : change > 0 ? 'bursts' : 'cracks';

const outcomes = {
  jams: 'The lid jams',
  loose: 'The lid gets a wider gap, and rattles',
  cracks: 'The bottom cracks',
  bursts: 'The bottom pushes the corners open',
} as const;

const cures = {
  dry: 'Stand the open box in drier air for a week or two, wax the lid, and only then plane a little',
  thicken:
    'Wait for damper air, or give the lid a thicker grip, such as a strip of felt; leave its width alone',
  float: 'Make a new bottom that floats, glued at most in the middle of its end-grain edges',
} as const;
const cureOf = { jams: 'dry', loose: 'thicken', cracks: 'float', bursts: 'float' } as const;

export const e12 = exercise({
  id: 'e12',
  title: 'A box moves',
  about: 'Jam, gap or crack, and what helps?',
  lesson: 'ten-years',
  rules: ['build-in-the-middle', 'never-glue-across-the-grain'],
  draw: (from, system) => ({
    part: from.one(['lid', 'glued'] as const),
    wood: from.one(woodIds),
    cut: from.one(cuts),
    width: system === 'mm' ? from.step(80, 200, 5) : inches(from.step(3, 8, 0.25)),
    longer: system === 'mm' ? from.step(40, 120, 10) : inches(from.step(1.5, 5, 0.5)),
    from: from.step(30, 70, 5),
    to: from.step(30, 70, 5),
  }),
  // Far enough apart that a lid with the usual running room meets its grooves, and a glued bottom is strained.
  fits: (values) => Math.abs(changeOf(values)) >= 0.8,
  pose: ({ part, ...piece }, system) => {
    const w = writer(system);
    const change = changeOf(piece);
    const outcome = outcomeOf(part, change);
    const cure = cureOf[outcome];
    const room = native(system, 0.3, 0.012);
    const damper = piece.to > piece.from;
    const wrongWay = damper
      ? 'The air becomes damper, so the wood takes up moisture and grows.'
      : 'The air becomes drier, so the wood gives off moisture and shrinks.';
    const wrongPart =
      part === 'lid'
        ? 'The lid is not glued: it can move in its grooves.'
        : 'The bottom is glued all round: it cannot move, so it strains the wood.';
    return {
      given: [
        {
          label: 'The part',
          text:
            part === 'lid'
              ? `a sliding lid with ${w(room, exact)} of play today`
              : 'a solid bottom, glued into its grooves all round',
        },
        ...givenPiece(piece, system, [
          'Width, across the grain',
          'Length, along the grain',
          'The box was made in',
          'It moves to',
        ]),
      ],
      table: moistureTable,
      question: 'By how much would the part change in width if it were free? What happens, and what helps?',
      reason: 'Why does it happen? Write it in a sentence, for your teacher.',
      lines: [
        ...stepsToPoints(piece),
        ask(changeWay(piece, system), {
          label: 'change of width',
          key: Math.abs(change),
          within: nearChange(system),
          print: fine,
          mistakes: changeSlips(piece),
        }),
        choose(
          [
            part === 'lid' ? 'runningRoom' : 'gluedAcross',
            'Ask whether the part grows or shrinks, and whether it is free to.',
            '',
          ],
          {
            label: 'what happens',
            key: outcome,
            options: (Object.keys(outcomes) as (keyof typeof outcomes)[]).map((id) => ({
              id,
              text: outcomes[id],
              says: (id === 'jams' || id === 'loose') === (part === 'lid') ? wrongWay : wrongPart,
            })),
          },
        ),
        choose(
          [
            part === 'lid' ? 'air' : 'gluedAcross',
            'Cure the cause, and leave what the next season gives back.',
            '',
          ],
          {
            label: 'what helps',
            key: cure,
            options: [
              ...(Object.keys(cures) as (keyof typeof cures)[]).map((id) => ({
                id,
                text: cures[id],
                says:
                  id === 'float'
                    ? 'The lid is free already; only its play does not fit the air of the season.'
                    : part === 'glued'
                      ? 'This part is glued in: as long as it cannot move, it will go on straining.'
                      : damper
                        ? 'The lid has grown: it needs to dry, not to wait for more damp or to fill its groove.'
                        : 'The lid has shrunk: in drier air it would shrink on.',
              })),
              {
                id: 'trim',
                text: 'Plane it today until it fits, or fill the gap with glue',
                says: 'What is planed off or glued up today is missing, or in the way, when the air turns back.',
              },
            ],
          },
        ),
      ],
    };
  },
});

/** E24: play through a year. Coefficients and air: Wood Handbook. Running room of 0.3 mm, 0.012 in: common practice. */

import { playAtDriest, playToday } from '../../calc/movement/panel.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exact, fine, inches, native, slip, step, writer } from '../core/make.ts';
import { changeWay, nearChange, stepsToPoints } from './swelling.ts';
import {
  cuts,
  givenWood,
  moistureTable,
  perPoint,
  pointsBetween,
  pointsStep,
  woodIds,
} from './wood-and-air.ts';

export const e24 = exercise({
  id: 'e24',
  title: 'A year of a lid',
  about: 'What play does a lid need today, and what has it on the driest day?',
  lesson: 'a-year-of-a-panel',
  rules: ['season-to-build-in', 'ask-which-swing-a-saying-assumes'],
  draw: (from, system) => ({
    wood: from.one(woodIds),
    cut: from.one(cuts),
    width: system === 'mm' ? from.step(60, 180, 5) : inches(from.step(2.5, 7, 0.25)),
    dry: from.step(30, 40, 5),
    from: from.step(40, 60, 5),
    to: from.step(50, 70, 5),
  }),
  // A day between the driest and the dampest, and movement that can be told from none both ways.
  fits: ({ wood, cut, width, dry, from, to }) => {
    const moves = width * perPoint(wood, cut).own;
    return (
      dry < from &&
      from < to &&
      moves * pointsBetween(from, to) > 0.25 &&
      moves * pointsBetween(dry, from) > 0.25
    );
  },
  pose: ({ wood, cut, width: W, dry, from, to }, system) => {
    const w = writer(system);
    const { own: C, other } = perPoint(wood, cut);
    const [up, down, all] = [pointsBetween(from, to), pointsBetween(dry, from), pointsBetween(dry, to)];
    const c = native(system, 0.3, 0.012);
    const within = nearChange(system);
    const piece = { wood, cut, width: W, longer: 0, from, to };
    const p = playToday.compute({ W, C, u: up, c });
    const driest = playAtDriest.compute({ W, C, f: down, p });
    const otherRings =
      'You took the figure of the other rings. Ask whether the width of this cut lies across the rings or along them.';
    const humidity =
      'You took points of humidity for points of moisture. Read the moisture content for both humidities in the table first; the wood follows that.';
    return {
      given: [
        ...givenWood(wood, cut),
        { label: 'Width of the sliding lid, across the grain', text: w(W) },
        { label: 'Air today', text: `${from} % relative humidity` },
        { label: 'Dampest air of the year', text: `${to} % relative humidity` },
        { label: 'Driest air of the year', text: `${dry} % relative humidity` },
        { label: 'Room to run on the dampest day', text: w(c, exact) },
      ],
      table: moistureTable,
      question: 'What play must it have today, both sides together? What play has it on the driest day?',
      lines: [
        ...stepsToPoints(piece),
        step(changeWay(piece, system), 'swelling until the dampest day', W * C * up, within, fine),
        ask(['runningRoom', 'Add the room to run.', `${w(W * C * up, exact)} + ${w(c, exact)}`], {
          label: 'play today',
          key: p,
          within,
          print: fine,
          mistakes: [
            slip(
              'no-room',
              W * C * up,
              'This is the swelling alone. The lid would touch both sides on the dampest day: add the room to run.',
            ),
            slip(
              'whole-year',
              W * C * all + c,
              'You counted from the driest day. What the lid has swollen until today is behind it: count from today to the dampest day.',
            ),
            slip('half', p / 2, 'You took one side. Asked for is both together.'),
            slip('other-rings', W * other * up + c, otherRings),
            slip('humidity-points', W * C * (to - from) + c, humidity),
          ],
        }),
        {
          ...pointsStep(from, dry),
          does: 'Read the moisture content for today and for the driest day in the table, and take one from the other.',
        },
        ask(
          [
            'driestDay',
            'Add what the lid shrinks until the driest day.',
            `${w(p, exact)} + ${w(W)} × ${C} × ${down}`,
          ],
          {
            label: 'play on the driest day',
            key: driest,
            within,
            print: fine,
            mistakes: [
              slip(
                'today',
                p,
                'This is the play of today. Until the driest day the lid shrinks, and the play grows.',
              ),
              slip(
                'shrinking',
                W * C * down,
                'This is what it shrinks from today. The play of today comes on top.',
              ),
              slip(
                'shrunk-off',
                p - W * C * down,
                'You took the shrinking from the play. The lid gets narrower, so the play gets wider: add it.',
              ),
              slip(
                'no-room',
                W * C * all,
                'You counted the swing of the year alone. The room to run on the dampest day comes on top.',
              ),
              slip('half', driest / 2, 'You took one side. Asked for is both together.'),
              slip('other-rings', W * other * all + c, otherRings),
              slip('humidity-points', W * C * (to - dry) + c, humidity),
            ],
          },
        ),
      ],
    };
  },
});

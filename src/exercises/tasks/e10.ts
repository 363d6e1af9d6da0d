/**
 * E10: how deep the groove of a bottom or a lid must be. Allowances and engagements are common practice: 0.5 mm, 0.020 in
 * and 3 mm, 1/8 in for a bottom held in the middle, 1.5 mm, 1/16 in for one that creeps; 0.3 mm, 0.012 in and 2 mm,
 * 3/32 in for a sliding lid.
 * Over 150 lines: an exercise is one file, and this one asks about three kinds of panel.
 */

import { grooveDepthCentral, grooveDepthCrept, playAtDriest, playToday } from '../../calc/movement/panel.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exact, fine, inches, native, points, size, slip, step, writer } from '../core/make.ts';
import { cuts, givenWood, perPoint, ringStep, woodIds } from './wood-and-air.ts';

/** A panel in grooves: free play on the dampest day and what must stay in on the driest, mm and inches; whether held in the middle. */
interface Panel {
  readonly text: string;
  readonly room: readonly [mm: number, inch: number];
  readonly engagement: readonly [mm: number, inch: number];
  readonly central: boolean;
}

const kinds: Readonly<Record<'held' | 'loose' | 'lid', Panel>> = {
  held: {
    text: 'a bottom, held in the middle by a dab of glue on each end-grain edge',
    room: [0.5, 0.02],
    engagement: [3, 1 / 8],
    central: true,
  },
  loose: {
    text: 'a bottom, loose in its grooves',
    room: [0.5, 0.02],
    engagement: [1.5, 1 / 16],
    central: false,
  },
  lid: { text: 'a sliding lid', room: [0.3, 0.012], engagement: [2, 3 / 32], central: false },
};

export const e10 = exercise({
  id: 'e10',
  title: 'Depth of the groove',
  about: 'How deep a groove keeps the panel in on the driest day?',
  lesson: 'wood-movement',
  rules: ['gap-beside-the-bottom', 'lid-engagement'],
  draw: (from, system) => ({
    kind: from.one(['held', 'loose', 'lid'] as const),
    wood: from.one(woodIds),
    cut: from.one(cuts),
    width: system === 'mm' ? from.step(60, 180, 5) : inches(from.step(2.5, 7, 0.25)),
    up: from.step(2, 4, 0.5),
    down: from.step(1, 3, 0.5),
  }),
  // Walls of 12 mm, 1/2 in take a groove of 6 mm, 1/4 in at most.
  fits: (values, system) => depthOf(values, system) <= native(system, 6, 1 / 4),
  pose: (values, system) => {
    const w = writer(system);
    const { kind, wood, cut, width: W, up: u, down: f } = values;
    const { text, central, room, engagement } = kinds[kind];
    const { own: C, other } = perPoint(wood, cut);
    const [c, E_d] = [native(system, ...room), native(system, ...engagement)];
    const p = playToday.compute({ W, C, u, c });
    const driest = playAtDriest.compute({ W, C, f, p });
    const lost = central ? driest / 2 : driest;
    const key = depthOf(values, system);
    const small = native(system, 0.1, 0.004);
    const mark = native(system, 1, 1 / 16);
    const withRings = (C_other: number) => {
      const play = playToday.compute({ W, C: C_other, u, c });
      const of = { p: play, W, C: C_other, f, E_d };
      return central ? grooveDepthCentral.compute(of) : grooveDepthCrept.compute(of);
    };
    return {
      given: [
        { label: 'Panel', text },
        ...givenWood(wood, cut),
        { label: 'Width, across the grain', text: w(W) },
        { label: 'From today it can gain', text: `${w(u, points)} of moisture content` },
        { label: 'From today it can lose', text: `${w(f, points)} of moisture content` },
        { label: 'Free play on the dampest day, both sides together', text: w(c, exact) },
        { label: 'To stay in the groove on the driest day', text: w(E_d) },
      ],
      question: 'How deep must the groove be at least?',
      lines: [
        ringStep(wood, cut),
        step(
          [
            'gapEachSide',
            'Play today: width × figure × points it can gain, and the free play.',
            `${w(W)} × ${C} × ${u} + ${w(c, exact)}`,
          ],
          'play today, both sides',
          p,
          small,
          fine,
          [slip('no-room', p - c, 'Add the free play that is left on the dampest day.')],
        ),
        step(
          [
            'driestDay',
            'Play on the driest day: add width × figure × points it can lose.',
            `${w(p, exact)} + ${w(W)} × ${C} × ${f}`,
          ],
          'play on the driest day',
          driest,
          small,
          fine,
          [slip('no-fall', p, 'This is the play today. In dry air the panel shrinks, and the play grows.')],
        ),
        central
          ? step(
              [
                'central',
                'Held in the middle, it loses half of that at each edge.',
                `${w(driest, exact)} divided by 2`,
              ],
              'lost at one edge',
              lost,
              small,
              fine,
              [slip('whole', driest, 'This is for both edges. Held in the middle, each loses half.')],
            )
          : step(
              ['crept', 'Free to creep, it can lose all of that at one edge.', w(driest, exact)],
              'lost at one edge',
              lost,
              small,
              fine,
              [
                slip(
                  'taken-central',
                  driest / 2,
                  'Nothing holds it in the middle. It can creep to one side, and the other edge loses all.',
                ),
              ],
            ),
        ask(
          ['engagement', 'Add what must stay in the groove, and round up.', `${w(lost, exact)} + ${w(E_d)}`],
          {
            label: 'depth of the groove',
            key,
            within: native(system, 0.3, 1 / 64),
            print: { ...size, round: 'up', ...(system === 'inch' && { denominator: 64 as const }) },
            mistakes: [
              central
                ? slip(
                    'whole',
                    E_d + driest,
                    'You let one edge lose all of the play. The dab of glue holds this bottom in the middle: each edge loses half.',
                  )
                : slip(
                    'taken-central',
                    E_d + driest / 2,
                    'You took the panel as held in the middle. It is free to creep: one edge can lose all of the play.',
                  ),
              slip(
                'other-rings',
                withRings(other),
                'The movement is that of the other ring direction. Quarter-sawn wood moves across the rings, flat-sawn wood along them.',
              ),
              slip(
                'no-fall',
                E_d + (central ? p / 2 : p),
                'You stopped at today’s play. On the driest day the panel has shrunk, and the play is wider.',
              ),
              slip(
                'no-engagement',
                lost,
                'This deep, the edge would come free on the driest day. Add what must stay in the groove.',
              ),
              slip(
                'no-rise',
                E_d + (central ? 0.5 : 1) * (driest - (p - c)),
                'You left out what the panel can gain. It is cut narrower today by that much.',
              ),
              slip(
                'rounded-down',
                Math.floor(key / mark + 1e-9) * mark,
                'You rounded the depth down to a mark of the rule. A gap and what must hold over a gap are rounded up.',
              ),
            ],
          },
        ),
      ],
    };
  },
});

/** The depth by the relation for a panel held in the middle, or for one that creeps, mm. */
function depthOf(
  {
    kind,
    wood,
    cut,
    width: W,
    up: u,
    down: f,
  }: { kind: keyof typeof kinds; wood: string; cut: string; width: number; up: number; down: number },
  system: 'mm' | 'inch',
): number {
  const { central, room, engagement } = kinds[kind];
  const { own: C } = perPoint(wood, cut);
  const p = playToday.compute({ W, C, u, c: native(system, ...room) });
  const of = { p, W, C, f, E_d: native(system, ...engagement) };
  return central ? grooveDepthCentral.compute(of) : grooveDepthCrept.compute(of);
}

/** E25: what a finish takes from a fit. Geometry; the film of a coat and the least play of 0.2 mm, 0.008 in: common practice. */

import { filmBuild, playUnderFilm } from '../../calc/finish/finish-film.ts';
import { exercise } from '../core/exercise.ts';
import { ask, choose, count, exact, inches, native, slip, writer } from '../core/make.ts';

const faces = 2;

export const e25 = exercise({
  id: 'e25',
  title: 'Coats on a tongue',
  about: 'How much play do the coats take, and does the lid still run?',
  lesson: 'what-a-finish-does',
  rules: ['no-finish-on-running-surfaces', 'finish-slows-does-not-stop'],
  draw: (from, system) => ({
    coats: from.step(2, 6, 1),
    film: system === 'mm' ? from.step(0.02, 0.05, 0.01) : inches(from.step(0.001, 0.002, 0.001)),
    play: system === 'mm' ? from.step(0.3, 0.9, 0.05) : inches(from.step(0.012, 0.036, 0.002)),
  }),
  // Some play is left, and it is not at the very edge of the least.
  fits: ({ coats, film, play }, system) => {
    const left = playUnderFilm.compute({ p: play, f: faces, n: coats, h: film });
    return left > native(system, 0.015, 0.0015) && Math.abs(left - native(system, 0.2, 0.008)) > 0.03;
  },
  pose: ({ coats: n, film: h, play }, system) => {
    const w = writer(system);
    const taken = filmBuild.compute({ f: faces, n, h });
    const left = playUnderFilm.compute({ p: play, f: faces, n, h });
    const least = native(system, 0.2, 0.008);
    const runs = left >= least;
    const within = native(system, 0.006, 0.0004);
    return {
      given: [
        { label: 'Play of the bare tongue, in its thickness', text: w(play, exact) },
        { label: 'Coats on each of its two faces', text: w(n, count) },
        { label: 'Dry film of one coat', text: w(h, exact) },
        { label: 'Least play for a lid to run', text: w(least, exact) },
      ],
      question: 'How much room do the coats take, how much play is left, and what do you do?',
      lines: [
        ask(
          [
            'film',
            'Multiply the film of a coat by the coats, and by the two faces.',
            `2 × ${n} × ${w(h, exact)}`,
          ],
          {
            label: 'room that the coats take',
            key: taken,
            within,
            print: exact,
            mistakes: [
              slip(
                'one-face',
                n * h,
                'You coated one face. The tongue has one above and one below in its groove: take it twice.',
              ),
              slip('one-coat', faces * h, 'This is one coat on both faces. Each further coat adds as much.'),
              slip('one-film', h, 'This is one coat on one face. Multiply by the coats, and by both faces.'),
            ],
          },
        ),
        ask(
          ['film', 'Take that from the play of the bare tongue.', `${w(play, exact)} − ${w(taken, exact)}`],
          {
            label: 'play left',
            key: left,
            within,
            print: exact,
            mistakes: [
              slip(
                'one-face',
                play - n * h,
                'You took off the coats of one face. The other face has as many.',
              ),
              slip('one-coat', play - faces * h, 'You took off one coat. Each further coat takes as much.'),
              slip('added', play + taken, 'You added it. The film fills the groove: subtract.'),
              slip('nothing', play, 'This is the bare play. Each coat on each face takes from it.'),
            ],
          },
        ),
        choose(['film', 'Compare the play left with the least.', ''], {
          label: 'what you do',
          key: runs ? 'coat' : 'mask',
          options: [
            {
              id: 'coat',
              text: 'It still runs with that play',
              says: 'Less play is left than the least. Compare what is left, not the play of the bare tongue.',
            },
            {
              id: 'mask',
              text: 'It drags: keep the film off the tongue and wax it',
              says: 'More play is left than the least: by its thickness this tongue runs. (Wax is good for it all the same.)',
            },
            {
              id: 'sealed',
              text: 'The play does not matter: the finish keeps moisture out, so nothing swells',
              says: 'A finish slows moisture down, it does not stop it: over a season the wood follows the air. And the film fills the groove at once.',
            },
          ],
        }),
      ],
    };
  },
});

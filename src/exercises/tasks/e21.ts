/** E21: a lid sawn off a shut box. Source of the relation: geometry. */

import { jointedHeight } from '../../calc/size/heights.ts';
import { exercise } from '../core/exercise.ts';
import { ask, exact, inches, native, size, slip, writer } from '../core/make.ts';

export const e21 = exercise({
  id: 'e21',
  title: 'A lid sawn off',
  about: 'How high is the box glued up, and where does the saw go?',
  lesson: 'lift-off-and-hinged-lids',
  rules: ['sawn-off-lid'],
  draw: (from, system) =>
    system === 'mm'
      ? { height: from.step(60, 120, 5), lid: from.step(15, 40, 1), kerf: from.one([1, 1.5, 2, 2.5, 3, 3.2]) }
      : {
          height: inches(from.step(2.5, 5, 0.25)),
          lid: inches(from.step(5 / 8, 1.5, 1 / 8)),
          kerf: inches(from.one([1 / 32, 1 / 16, 3 / 32, 1 / 8])),
        },
  // A lid of a quarter to two fifths of the box.
  fits: ({ height, lid }) => lid >= height / 4 && lid <= 0.4 * height,
  pose: ({ height: H, lid, kerf: k }, system) => {
    const w = writer(system);
    const kerf = w(k, system === 'mm' ? exact : size);
    const box = H - lid;
    const glued = jointedHeight.compute({ H, h: 0, k });
    const within = native(system, 0.1, 0.01);
    return {
      given: [
        { label: 'Height of the finished box, lid on', text: w(H) },
        { label: 'Height of the lid', text: w(lid) },
        { label: 'Saw cut', text: kerf },
      ],
      question:
        'How high is the shut box glued up? How far above its lower edge is the lower side of the saw cut?',
      lines: [
        ask(['sawnLid', 'Add one saw cut to the finished height.', `${w(H)} + ${kerf}`], {
          label: 'height as glued up',
          key: glued,
          within,
          print: size,
          mistakes: [
            slip(
              'no-kerf',
              H,
              'This is the finished height. The saw turns a strip into dust: glue the box up so much higher.',
            ),
            slip(
              'kerf-off',
              H - k,
              'You took the saw cut off. It is lost later, so it must be there now: add it.',
            ),
            slip(
              'two-kerfs',
              H + 2 * k,
              'You added two saw cuts. One cut goes around the box and frees the lid.',
            ),
            slip(
              'lid-added',
              H + lid,
              'You added the lid. It is in the finished height already; only the saw cut is missing.',
            ),
          ],
        }),
        ask(['sawnLid', 'From the finished height take the lid.', `${w(H)} − ${w(lid)}`], {
          label: 'lower side of the cut',
          key: box,
          within,
          print: size,
          mistakes: [
            slip(
              'upper-side',
              box + k,
              'This is the upper side of the cut. The box below ends at the lower side: one saw cut less.',
            ),
            slip(
              'kerf-off',
              box - k,
              'You took the saw cut from the box as well. It was added to the height: the box keeps its own.',
            ),
            slip(
              'lid',
              lid,
              'This is the height of the lid. Measured from the lower edge, the box comes first.',
            ),
            slip(
              'half-kerf',
              box + k / 2,
              'This is the middle of the cut. Half a saw cut lower is where the box ends.',
            ),
          ],
        }),
      ],
    };
  },
});

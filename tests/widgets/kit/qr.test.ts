/** QR codes: what is drawn is read back, with either mask, by a reader of another maker. */
import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { linkOf } from '../../../src/exercises/core/learner.ts';
import { exercises } from '../../../src/exercises/index.ts';
import { type Qr, qrMaker } from '../../../src/widgets/kit/qr.ts';

/** Paints the path by its stretches, four pixels a module, and reads it. */
function read({ size, path }: Qr): string | undefined {
  const scale = 4;
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g))
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row++)
      for (let at = Number(x) * scale; at < (Number(x) + Number(length)) * scale; at++)
        pixels.fill(0, (row * side + at) * 4, (row * side + at) * 4 + 3);
  return jsQR(pixels, side, side)?.data;
}

test.each(['one', 'many'] as const)(
  'the links of a class are read back (%s)',
  { timeout: 60_000 },
  async (how) => {
    const make = await qrMaker(how);
    for (const { id } of exercises)
      for (const number of [1, 2, 17, 60]) {
        const link = `https://example.org/exercises/${id}/${linkOf({ className: 'Évening class', number }, 'inch')}`;
        expect(read(make(link)!)).toBe(link);
      }
  },
);

test('a text that no code holds makes none', async () => {
  expect((await qrMaker('one'))('x'.repeat(5000))).toBeUndefined();
});

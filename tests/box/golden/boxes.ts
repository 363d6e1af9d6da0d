/**
 * A thousand boxes that stay the same whatever happens to the example: a base of plain numbers, other choices, and a
 * few sizes moved by up to a third. Many can be built, some cannot; both are on record.
 */
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Box } from '../../../src/box/subjects/inputs.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { exampleBox } from '../reckoned-box.ts';
import base from './base.json' with { type: 'json' };

const howMany = 1000;
const seed = 20261126;

const baseBox = { ...exampleBox, ...(base as unknown as Box) };
/** In the order of the base, so that the boxes stay the same however the inputs are declared. */
const choices = Object.keys(base).flatMap((name) => {
  const row = fields[name as keyof Box];
  return row.type === 'choice' ? [{ name, options: Object.keys(row.options) }] : [];
});
const numbers = Object.entries(base).filter(
  (entry): entry is [string, number] => typeof entry[1] === 'number',
);

/** The boxes, the base first. */
export function goldenBoxes(): Box[] {
  const random = xoroshiro128plus(seed);
  const pick = <Value>(list: readonly Value[]): Value => list[uniformInt(random, 0, list.length - 1)]!;
  const one = (): Box => {
    const box: Record<string, unknown> = { ...baseBox };
    for (const { name, options } of choices)
      if (name !== 'species' && uniformInt(random, 0, 2) === 0) box[name] = pick(options);
    if (uniformInt(random, 0, 1) === 0) box.species = pick(Object.keys(fields.species.options));
    for (let moved = uniformInt(random, 0, 8); moved > 0; moved--) {
      const [name, value] = pick(numbers);
      const field = fields[name as keyof Box];
      const whole = field.type === 'number' && (field.kind === 'count' || field.digits === 0);
      const next = value * (0.67 + uniformInt(random, 0, 66) / 100);
      box[name] = whole ? Math.round(next) : Math.round(next * 100) / 100;
    }
    return box as unknown as Box;
  };
  return [baseBox, ...Array.from({ length: howMany }, one)];
}

/** Any answers to the three questions of a new box, and any ruler. */
import fc from 'fast-check';
import type { NewBoxAnswers } from '../../../src/box/design/new-box.ts';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { rulers } from '../../../src/units/index.ts';

const things = [
  { name: 'domino', length: 50, width: 25, height: 9, count: 28 },
  { name: 'pack of cards', length: 88.9, width: 63.5, height: 17, count: 2 },
  { name: 'index cards', length: 127, width: 76.2, height: 50, count: 1 },
  { name: 'pencil', length: 190, width: 7, height: 7, count: 12 },
  { name: 'tea bag', length: 75, width: 75, height: 5, count: 30 },
  { name: 'photographs', length: 152.4, width: 101.6, height: 50, count: 1 },
] as const;
const own = fc.record({
  name: fc.constant('my own'),
  length: fc.integer({ min: 40, max: 350 }),
  width: fc.integer({ min: 30, max: 220 }),
  height: fc.integer({ min: 8, max: 120 }),
  count: fc.constant(1),
});
export const answers: fc.Arbitrary<NewBoxAnswers> = fc
  .record({
    item: fc.oneof(fc.constantFrom(...things), own),
    kind: fc.constantFrom('sliding', 'lift-off', 'sawn'),
    joint: fc.constantFrom(...(Object.keys(fields.joint.options) as NewBoxAnswers['joint'][])),
    species: fc.constantFrom(...(Object.keys(fields.species.options) as NewBoxAnswers['species'][])),
    dry: fc.integer({ min: 20, max: 50 }),
    swing: fc.integer({ min: 5, max: 40 }),
    today: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ item, kind, joint, species, dry, swing, today }) => ({
    name: 'New box',
    items: [item],
    kind,
    joint,
    species,
    air: {
      temperature: 20,
      humidityDry: dry,
      humidityDamp: dry + swing,
      humidityToday: Math.round(dry + swing * today),
    },
  }));
export const anyRuler = fc.constantFrom(...Object.values(rulers));

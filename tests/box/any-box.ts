/** Boxes of every kind, for properties that must hold for any of them. */
import fc from 'fast-check';
import { exampleBox } from '../../src/box/subjects/example.ts';
import { type Box, fields } from '../../src/box/subjects/inputs.ts';

/** The example with other choices, and some of its numbers anywhere in their fields. */
export const anyBox: fc.Arbitrary<Box> = fc
  .tuple(
    fc.record(
      Object.fromEntries(
        Object.entries(fields).flatMap(([name, field]) =>
          field.type === 'choice' ? [[name, fc.constantFrom(...Object.keys(field.options))]] : [],
        ),
      ),
    ),
    fc.array(
      fc
        .constantFrom(...Object.entries(fields))
        .chain(([name, field]) =>
          field.type === 'number'
            ? fc
                .double({ min: field.low, max: field.high, noNaN: true })
                .map((value) => [name, value] as const)
            : fc.constant([name, exampleBox[name as keyof Box]] as const),
        ),
      { maxLength: 4 },
    ),
  )
  .map(([choices, numbers]) => ({ ...exampleBox, ...choices, ...Object.fromEntries(numbers) }) as Box);

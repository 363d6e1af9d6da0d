/** The figures of the chosen wood in the box's values. */
import { expect, test } from 'vitest';
import { fields } from '../../../src/box/subjects/inputs.ts';
import { evaluate } from '../../../src/box/whole/index.ts';
import { exampleBox } from '../reckoned-box.ts';

const of = (species: string) => evaluate({ ...exampleBox, species });

test('a box of black walnut carries the printed figures of black walnut', () => {
  expect(of('black-walnut')).toMatchObject({
    radialCoefficient: 0.0019, // Wood Handbook Table 13-5
    tangentialCoefficient: 0.00274, // Wood Handbook Table 13-5
    radialShrinkage: 5.5, // Wood Handbook Table 4-3
    tangentialShrinkage: 7.8, // Wood Handbook Table 4-3
    specificGravity: 0.55, // Wood Handbook Table 5-3
  });
});

test('a figure that no table has is not a number, never 0', () => {
  expect(of('apple').tensionPerpendicular).toBeNaN();
  expect(of('no such wood').tangentialCoefficient).toBeNaN();
});

test('a wood that stops growing well below 30 % has no shrinkage to calculate with', () => {
  expect(of('teak').tangentialShrinkage).toBeNaN();
  expect(of('teak').tangentialCoefficient).toBeGreaterThan(0);
});

test('the list of woods tells group averages and figures from memory apart', () => {
  const { options } = fields.species;
  expect(options['black-walnut']).toBe('black walnut');
  expect(options['commercial-red-oak']).toBe('commercial red oak (group average)');
  expect(options.teak).toBe('teak§');
  expect(options[exampleBox.species]).toBe('black cherry');
});

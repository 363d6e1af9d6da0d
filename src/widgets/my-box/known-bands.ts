/** The bands of the numbers that a first visit shows, worked out while the page is built: it need not fetch the worker. */
import { bandsOf } from '../../box/design/bands.ts';
import { exampleFor } from '../../box/subjects/example.ts';
import { fields, type NumberName } from '../../box/subjects/inputs.ts';
import { type UnitSystem, usualRuler } from '../../units/index.ts';
import { inputsIn, type PartOfBench } from './parts.ts';
import type { KnownBands } from './use-bands.ts';

/** @param part that a first visit begins with */
export function bandsOfExample(part: PartOfBench): KnownBands {
  const of = (system: UnitSystem) => {
    const box = exampleFor(system);
    const numbers = inputsIn(part, 'basic', box).filter(
      (name): name is NumberName => fields[name].type === 'number',
    );
    return Object.fromEntries(numbers.map((name) => [name, bandsOf(box, name, usualRuler[system])]));
  };
  return { mm: of('mm'), inch: of('inch') };
}

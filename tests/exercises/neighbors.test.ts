/** Two who sit side by side never get the same numbers. */
import { expect, test } from 'vitest';
import { taskFor } from '../../src/exercises/core/task.ts';
import { exercises } from '../../src/exercises/index.ts';
import { systems } from './seeds.ts';

const classes = Array.from({ length: 1000 }, (_, at) => ({ name: `class ${at}`, from: 1 + (at % 58) }));

for (const system of systems)
  test.each(exercises.map((one) => [one.id, one] as const))(
    `in a thousand classes no two neighbors read the same numbers in %s, in ${system}`,
    { timeout: 60_000 },
    (_, one) => {
      const alike: string[] = [];
      for (const { name, from } of classes) {
        // What a learner reads, not only what was drawn: a value that is not said would tell nobody apart.
        const read = [from, from + 1, from + 2].map((number) => {
          const { given, question } = taskFor(one, { className: name, number }, system);
          return JSON.stringify([given, question]);
        });
        if (read[0] === read[1] || read[1] === read[2]) alike.push(`${name}, ${from}`);
      }
      expect(alike).toEqual([]);
    },
  );

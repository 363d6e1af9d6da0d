/**
 * How long the whole box takes: every value, part, groove and refusal, and every verdict.
 * Aim: 200 microseconds or less, so that every drawing can follow a slider.
 */
import '../virtual-woods.ts';
import { microseconds } from './microseconds.ts';

const { exampleBox } = await import('../../src/box/subjects/example.ts');
const { verdicts } = await import('../../src/box/whole/index.ts');
const { designBox } = await import('../../src/box/design/design.ts');
const { evaluate } = await import('../../src/box/whole/index.ts');

const AIM = 200;
const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'keyed-mitre', 'splined-mitre', 'rabbet'] as const;

console.log(`values alone: ${microseconds((wall) => evaluate({ ...exampleBox, wall })).toFixed(0)} µs`);
for (const kind of kinds)
  for (const joint of joints) {
    const time = microseconds((wall) => {
      const { values } = designBox({ ...exampleBox, kind, joint, wall });
      verdicts(values);
    });
    console.log(
      `${`${kind}, ${joint}`.padEnd(24)} ${time.toFixed(0).padStart(4)} µs with verdicts, ${(time / AIM).toFixed(2)} of the ${AIM} aimed at`,
    );
  }

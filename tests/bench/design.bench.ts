/**
 * How long the whole box takes: every value, part, groove and refusal, and every verdict.
 * Aim: 200 microseconds or less, so that every drawing can follow a slider.
 */
import { registerHooks } from 'node:module';
import { woodsPlugin } from '../../src/build/woods-plugin.ts';

// Outside the build the tables are packed by the same plugin.
const plugin = woodsPlugin();
const virtual = 'virtual:';
registerHooks({
  resolve: (name, context, next) =>
    name.startsWith(virtual) ? { url: name, shortCircuit: true } : next(name, context),
  load: (url, context, next) =>
    url.startsWith(virtual)
      ? {
          format: 'module',
          shortCircuit: true,
          source: plugin.load.call({ addWatchFile: () => {} }, `\0${url}`) ?? '',
        }
      : next(url, context),
});

const { exampleBox } = await import('../../src/box/box.ts');
const { verdicts } = await import('../../src/box/checks/index.ts');
const { designBox } = await import('../../src/box/design.ts');
const { evaluate } = await import('../../src/box/evaluate.ts');

const AIM = 200;
const kinds = ['sliding', 'lift-off', 'sawn'] as const;
const joints = ['finger', 'dovetail', 'keyed-mitre', 'splined-mitre', 'rabbet'] as const;

/** Microseconds of one call in the fastest of many rounds: other programs only add. Every call gets another wall, as a slider would. */
function microseconds(work: (wall: number) => void): number {
  const calls = 40;
  const rounds = Array.from({ length: 100 }, () => {
    const start = performance.now();
    for (let call = 0; call < calls; call++) work(9 + call / calls);
    return ((performance.now() - start) * 1000) / calls;
  });
  return Math.min(...rounds);
}

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

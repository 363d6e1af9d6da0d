/**
 * The whole box, all derived values and verdicts, against the same relations evaluated by mathjs from their expressions.
 * Aims: 50 microseconds or less, and at most a twentieth of what mathjs takes in the same run.
 */
import { compile, type EvalFunction, unit } from 'mathjs';
import '../virtual-woods.ts';
import { microseconds } from './microseconds.ts';

const { exampleBox } = await import('../../src/box/subjects/example.ts');
const { verdicts } = await import('../../src/box/whole/index.ts');
const { evaluate, wholeModel } = await import('../../src/box/whole/index.ts');

const ours = microseconds((wall) => {
  verdicts(evaluate({ ...exampleBox, wall }));
});

const values = evaluate(exampleBox);
const compiled = new Map<string, EvalFunction>();
const rows = Object.values(wholeModel.results).map((result) => {
  const { of } = result.work(values);
  compiled.set(of.id, compiled.get(of.id) ?? compile(of.expression));
  return { code: compiled.get(of.id)!, of, result };
});
/** Percent points and temperatures of fitted formulas are pure numbers, as in `tests/calc/core/relations.test.ts`. */
const attach = (value: number, of: string) => (['1', '%', 'degC'].includes(of) ? value : unit(value, of));
/** Every relation of the box by mathjs, with the reader's numbers put in, with their units or bare. */
const byMathjs = (withUnits: boolean) =>
  microseconds((wall) => {
    const now = { ...values, wall };
    for (const { code, of, result } of rows) {
      const { given } = result.work(now);
      const scope: Record<string, unknown> = {};
      for (const symbol in of.inputs)
        scope[symbol] = withUnits ? attach(given[symbol]!, of.inputs[symbol]!.unit) : given[symbol];
      code.evaluate(scope);
    }
  });

const report = (how: string, theirs: number) =>
  console.log(
    `the same relations through mathjs, compiled, ${how}: ${theirs.toFixed(0)} µs; ratio 1 to ${(theirs / ours).toFixed(1)}, aimed at 1 to 20`,
  );

console.log(
  `${rows.length} results and all verdicts: ${ours.toFixed(1)} µs, ${(ours / 50).toFixed(2)} of the 50 aimed at`,
);
report('with units', byMathjs(true));
report('bare numbers', byMathjs(false));

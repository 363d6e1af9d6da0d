/** Two finishes against the days: what each keeps out, as published and by one resistance. */
import { rowsOf } from '../../../box/core/result.ts';
import { effectivenessAfter, finishes, surfaceUnderFinish, TEST_BLOCK } from '../../../calc/finish/finish.ts';
import { FinishRace, type Runner } from '../../../figures/finish/FinishRace.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { lab } from '../../lesson/lab-spec.ts';
import { runner, runners } from './choice.ts';

const Percent = ({ of }: { of: number }) => <Quantity value={of} kind="percent" digits={0} />;

/** What is known of one finish, in a sentence. */
function Says({ of: { name, model, published }, index }: { of: Runner; index: number }) {
  const finish = finishes[index];
  const [first] = published;
  const last = published.at(-1)!;
  return (
    <>
      {name.replace(/ \(.*/, '')}: <Percent of={first!.percent} /> kept out after {first!.day}{' '}
      {first!.day === 1 ? 'day' : 'days'}
      {published.length > 1 && (
        <>
          , <Percent of={last.percent} /> after {last.day}
        </>
      )}
      .{' '}
      {!finish
        ? 'It lets go faster than any one resistance would, so no line is drawn. '
        : model && (
            <>
              {published.length === 1 && 'One figure proves no line, but the line through it says '}
              {published.length > 1 && 'By the line, '}
              <Percent of={effectivenessAfter(60, finish.resistance)} /> after two months.{' '}
            </>
          )}
    </>
  );
}

type Which = 'first' | 'second';
const row = rowsOf<Record<Which, string>>();
/** A finish that no one resistance describes has no row. */
const passes = (which: Which, word: string) =>
  row(surfaceUnderFinish, (v) => ({ S_air: TEST_BLOCK.surface, r: finishes[Number(v[which])]!.resistance }), {
    label: `how easily moisture passes ${word}, mm a day`,
    kind: 'number',
    digits: 2,
    rule: 'finish-slows-does-not-stop',
    when: (v) => Number(v[which]) < finishes.length,
  });

export const raceLab = lab({
  title: 'A finish against the days',
  own: runners,
  controls: ['first', 'second'],
  figure: ({ values: { first, second } }) => (
    <FinishRace runners={[runner(Number(first)), runner(Number(second))]} />
  ),
  says: ({ first, second }) =>
    [first, second].map((index) => <Says key={index} of={runner(Number(index))} index={Number(index)} />),
  results: [passes('first', 'the first'), passes('second', 'the other')],
});

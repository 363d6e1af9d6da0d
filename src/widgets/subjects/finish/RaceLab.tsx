/** Two finishes against the days: what each keeps out, as published and by one resistance. */
import { useSignal } from '@preact/signals';
import { work } from '../../../calc/core/working.ts';
import { effectivenessAfter, finishes, surfaceUnderFinish, TEST_BLOCK } from '../../../calc/finish/finish.ts';
import { FinishRace, type Runner } from '../../../figures/finish/FinishRace.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { RelationLine } from '../../kit/ResultLine.tsx';
import { useStore } from '../../kit/use-store.ts';
import { LabFrame } from '../../lesson/Lab.tsx';
import { OwnChoice } from '../../lesson/OwnNumber.tsx';
import { linseed, runner, runnerLabels, varnish } from './choice.ts';

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

export function RaceLab() {
  const units = useStore().units.value;
  const first = useSignal(varnish);
  const second = useSignal(linseed);
  const both = [first, second] as const;
  return (
    <LabFrame
      title="A finish against the days"
      picture={
        <>
          <FinishRace runners={[runner(first.value), runner(second.value)]} />
          <p class="says">
            {both.map(({ value }) => (
              <Says key={value} of={runner(value)} index={value} />
            ))}
          </p>
        </>
      }
      controls={
        <>
          <OwnChoice label="one finish" options={runnerLabels} of={first} />
          <OwnChoice label="another" options={runnerLabels} of={second} />
        </>
      }
      results={both.map(({ value }, i) => {
        const finish = finishes[value];
        return (
          finish && (
            <RelationLine
              key={i === 0 ? 'first' : 'second'}
              label={`how easily moisture passes it, mm a day: ${finish.name}`}
              kind="number"
              digits={2}
              working={work(surfaceUnderFinish, { S_air: TEST_BLOCK.surface, r: finish.resistance })}
              units={units}
              rule="finish-slows-does-not-stop"
            />
          )
        );
      })}
    />
  );
}

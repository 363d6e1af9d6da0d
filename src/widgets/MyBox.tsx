/** The current box: its sizes, and what each rule says about it. */
import { verdicts } from '../box/checks/index.ts';
import { InsideOutside } from '../figures/InsideOutside.tsx';
import { Quantity } from '../figures/parts/Quantity.tsx';
import { useStore } from '../notebook/use-store.ts';
import { Control } from './Control.tsx';
import { VerdictLine } from './VerdictLine.tsx';

export default function MyBox() {
  const store = useStore();
  const v = store.values.value;
  return (
    <>
      <InsideOutside values={v} />
      <p>
        Outside <Quantity value={v.outsideLength} kind="length" /> by{' '}
        <Quantity value={v.outsideWidth} kind="length" /> by{' '}
        <Quantity value={v.outsideHeight} kind="length" />.
      </p>
      <Control name="wall" store={store} />
      <ul class="verdicts">
        {verdicts(v).map((verdict) => (
          <VerdictLine key={verdict.check.rule + verdict.check.label} verdict={verdict} />
        ))}
      </ul>
    </>
  );
}

/** What a class needs: so many learners, the box they make, and the list of it to print. */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { NumberField } from '../../box/core/field.ts';
import { count, number } from '../../box/core/inputs.ts';
import { designBox } from '../../box/design/design.ts';
import { classStock } from '../../box/stock/class-stock.ts';
import { exampleBox, exampleFor, isExample } from '../../box/subjects/example.ts';
import type { Box } from '../../box/subjects/inputs.ts';
import { currentBox, loadBox } from '../../notebook/current.ts';
import { designs, loadDesigns } from '../../notebook/designs.ts';
import { units } from '../../notebook/units.ts';
import { NumberControl } from '../kit/Control.tsx';
import { MaterialList } from './MaterialList.tsx';

const learnersField: NumberField = count('learners', { low: 1, high: 60, start: 12 });
const spareField: NumberField = number('spare boxes', 'percent', {
  low: 0,
  high: 100,
  step: 5,
  start: 20,
  help: 'One in five is common practice: cuts go wrong, and an offcut is needed to try each set-up.',
});

/** Which box the class makes: the reader's own, the example, or a kept one by its place in the list. */
type Choice = 'mine' | 'example' | number;

export default function Materials() {
  const id = useId();
  const live = useSignal(false);
  const choice = useSignal<Choice>('mine');
  const learners = useSignal(12);
  const spare = useSignal(20);
  const box = useComputed<Box>(() => {
    if (!live.value) return exampleBox;
    if (choice.value === 'example') return exampleFor(units.value);
    return choice.value === 'mine'
      ? currentBox.value
      : (designs.value[choice.value]?.box ?? currentBox.value);
  });
  const design = useComputed(() => designBox(box.value));
  const stock = useComputed(() => classStock(design.value, learners.value, spare.value));
  const system = useComputed(() => (live.value ? units.value : 'mm'));
  useEffect(() => {
    loadBox();
    loadDesigns();
    live.value = true;
  }, []);
  return (
    <section class="materials" aria-label="Materials">
      <p class="materials-choice screen-only">
        <label for={id}>everybody makes</label>
        <select
          id={id}
          value={String(choice.value)}
          onChange={({ currentTarget: { value } }) => {
            choice.value = value === 'mine' || value === 'example' ? value : Number(value);
          }}
        >
          <option value="mine">my box{live.value && `: ${currentBox.value.name}`}</option>
          {live.value && !isExample(currentBox.value) && <option value="example">the example</option>}
          {designs.value.map(({ name }, at) => (
            <option key={name} value={String(at)}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <NumberControl
        field={learnersField}
        value={learners.value}
        system={system.value}
        set={(to) => {
          learners.value = Math.round(to);
        }}
      />
      <NumberControl
        field={spareField}
        value={spare.value}
        system={system.value}
        set={(to) => {
          spare.value = to;
        }}
      />
      <h2>{box.value.name}</h2>
      {design.value.parts.length === 0 ? (
        <p class="message">This box cannot be built yet. My box says why.</p>
      ) : (
        <MaterialList design={design.value} stock={stock.value} learners={learners.value} />
      )}
      <p class="screen-only">
        <button type="button" onClick={() => window.print()}>
          print this list
        </button>
      </p>
    </section>
  );
}

/** What a class needs for so many boxes: boards with their saw cuts, plywood, and a list to print. */
import { useComputed, useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import type { NumberField } from '../../box/core/field.ts';
import { count, number } from '../../box/core/inputs.ts';
import { type Design, designBox } from '../../box/design/design.ts';
import { shownSize } from '../../box/design/shown-size.ts';
import { type ClassStock, classStock } from '../../box/stock/class-stock.ts';
import { exampleBox, exampleFor, isExample } from '../../box/subjects/example.ts';
import { type Box, fields } from '../../box/subjects/inputs.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Sizes } from '../../figures/parts/Sizes.tsx';
import { currentBox, loadBox } from '../../notebook/current.ts';
import { designs, loadDesigns } from '../../notebook/designs.ts';
import { units } from '../../notebook/units.ts';
import { NumberControl } from '../kit/Control.tsx';
import { bought } from './feet-or-meters.ts';

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

const Bought = ({ length }: { length: number }) => {
  const { mm, inch } = bought(length);
  return (
    <>
      <span class="mm">{mm}</span>
      <span class="inch">{inch}</span>
    </>
  );
};

const Length = ({ value }: { value: number }) => (
  <Quantity value={value} kind="length" as="size" round="up" />
);
const counted = (number: number, one: string, many: string) => `${number} ${number === 1 ? one : many}`;

function List({ design, stock, learners }: { design: Design; stock: ClassStock; learners: number }) {
  const { box } = design;
  return (
    <>
      <p class="says" role="status">
        <b>
          {counted(stock.boards, 'board', 'boards')}, <Bought length={stock.length} /> together
        </b>
        , for {counted(stock.boxes, 'box', 'boxes')}: {counted(learners, 'learner', 'learners')} and{' '}
        {stock.boxes - learners} to spare.
      </p>
      {stock.shortages.map(({ what, fix }) => (
        <p key={what} class="message">
          {what} {fix}
        </p>
      ))}
      <table>
        <tbody>
          <tr>
            <th scope="row">a board, {fields.species.options[box.species]}</th>
            <td>
              <Sizes of={[box.boardLength, box.boardWidth, box.boardThickness]} asTyped />
            </td>
          </tr>
          <tr>
            <th scope="row">strips of one box, end to end</th>
            <td>
              <Length value={stock.stripsOfOne} />
            </td>
          </tr>
          <tr>
            <th scope="row">
              saw cuts in them, {stock.cutsOfOne} of{' '}
              <Quantity value={box.kerf} kind="length" denominator={64} />
            </th>
            <td>
              <Length value={stock.sawnOfOne} />
            </td>
          </tr>
          <tr>
            <th scope="row">strips of all boxes, end to end</th>
            <td>
              <Bought length={stock.stripsOfOne * stock.boxes} />
            </td>
          </tr>
          {stock.plywood.map(({ part, count: panels }) => (
            <tr key={part.name}>
              <th scope="row">
                plywood: {panels} × {part.label}
              </th>
              <td>
                <Quantity {...shownSize(part, 'rough', 'length')} /> ×{' '}
                <Quantity {...shownSize(part, 'rough', 'width')} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="help">
        {stock.shared
          ? 'Strips of several boxes lie side by side on a board, as its width and length allow. '
          : 'The walls are resawn pairs that match, so each box keeps boards of its own. '}
        The layout of one box stands on its build sheet. Knots and cracks are not counted.
      </p>
    </>
  );
}

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
        <List design={design.value} stock={stock.value} learners={learners.value} />
      )}
      <p class="screen-only">
        <button type="button" onClick={() => window.print()}>
          print this list
        </button>
      </p>
    </section>
  );
}

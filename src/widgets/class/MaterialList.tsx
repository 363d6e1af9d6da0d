/** The list of what a class needs: boards with their saw cuts, and plywood. */
import type { Design } from '../../box/design/design.ts';
import { shownSize } from '../../box/design/shown-size.ts';
import type { ClassStock } from '../../box/stock/class-stock.ts';
import { fields } from '../../box/subjects/inputs.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Sizes } from '../../figures/parts/Sizes.tsx';
import { bought } from './feet-or-meters.ts';

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

export function MaterialList({
  design,
  stock,
  learners,
}: {
  design: Design;
  stock: ClassStock;
  learners: number;
}) {
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

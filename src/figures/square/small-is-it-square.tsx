/** A box from above, leaning as its diagonals say, many times. */
import { leanFromDiagonals } from '../../calc/square/diagonals.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

/** A difference that is seen, where none is measured, mm; and how much the lean is enlarged. */
const [shown, times] = [1, 16] as const;

const IsItSquareSmall: SmallFigure = ({ values: v }) => {
  const { insideLength: a, insideWidth: b, wall } = v;
  const lean = leanFromDiagonals.compute({ a, b, D: v.diagonalsApart || shown });
  const x = b * Math.sin((lean * Math.PI) / 180) * times;
  const at = (right: number, down: number) => `${right + x * (1 - down / b)} ${down}`;
  const around = (by: number) =>
    `M${[at(-by, -by), at(a + by, -by), at(a + by, b + by), at(-by, b + by)].join('L')}Z`;
  return (
    <SmallDrawing view={[-2 * wall, -wall, a + 4 * wall + x, b + 2 * wall]}>
      <path class="wood" fill-rule="evenodd" d={around(wall) + around(0)} />
      <path class="curve" d={`M${at(0, b)}L${at(a, 0)}M${at(0, 0)}L${at(a, b)}`} />
    </SmallDrawing>
  );
};

export default IsItSquareSmall;

/** The end of a log, and two boards of the same size in it: one flat-sawn, one quarter-sawn. Every sixth ring is drawn. */
import { reachOf } from '../../calc/board/rings.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';
import { logRadius, ringsOf } from './LogEnd.tsx';

/** mm */
const ringWidth = 24;

const ReadingTheBoardSmall: SmallFigure = ({ values: { boardWidth: width, boardThickness: thickness } }) => {
  const board = { width, thickness, turn: 0 };
  // As far out as the bark lets them: the log is made up, the boards are the reader's.
  const out = (center: (at: number) => readonly [number, number]) => {
    let at = logRadius;
    while (at > 0 && reachOf({ ...board, center: center(at) }) > logRadius - 6) at -= 1;
    return center(at);
  };
  const places = [out((at) => [0, at]), out((at) => [at, 0])];
  return (
    <SmallDrawing view={[-logRadius - 4, -logRadius - 4, 2 * logRadius + 8, 2 * logRadius + 8]}>
      <circle class="wood" r={logRadius} />
      <path class="ring" d={ringsOf(ringWidth)} />
      {places.map(([x, y]) => (
        <rect
          key={x}
          class="board"
          x={x - width / 2}
          y={-y - thickness / 2}
          width={width}
          height={thickness}
        />
      ))}
    </SmallDrawing>
  );
};

export default ReadingTheBoardSmall;

/** The fourth corner of the box from outside: the end of the last wall, the beginning of the first, and how their lines meet. */
import { lineRound } from '../../calc/board/line-round.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

/** Slope of the lines and angle of the rings, degrees. Ours. */
const figure = { slope: 2, rings: 80 } as const;
/** How a face that recedes is drawn: across and up, per mm. */
const [across, up] = [0.87, 0.32] as const;

const GrainRoundTheCornerSmall: SmallFigure = ({ values: v }) => {
  const { outsideLength: length, outsideWidth: width, outsideHeight: high, kerf, planing } = v;
  const walls = lineRound(
    { length, width, kerf, planing, ...figure },
    v.wallsFrom === 'bookmatched',
    high * 0.2,
  );
  const faces = [
    { wall: walls[3]!, from: -length, lean: up, class: 'wood' },
    { wall: walls[0]!, from: 0, lean: -up, class: 'wood-end' },
  ];
  const rise = up * Math.max(length, width);
  return (
    <SmallDrawing view={[-length * across, -high - rise, (length + width) * across, high + rise]}>
      {faces.map(({ wall, from, lean, class: name }) => (
        <g key={name} transform={`matrix(${across} ${lean} 0 1 0 0)`}>
          <clipPath id={`round-${name}`}>
            <rect x={from} y={-high} width={wall.length} height={high} />
          </clipPath>
          <rect class={name} x={from} y={-high} width={wall.length} height={high} />
          <g clip-path={`url(#round-${name})`}>
            <path
              class="ring"
              d={[-4, -3, -2, -1, 1, 2, 3, 4]
                .map((n) => (n * high) / 5)
                .map((h) => `M${from} ${-wall.start - h}L${from + wall.length} ${-wall.end - h}`)
                .join('')}
            />
            <path class="curve" d={`M${from} ${-wall.start}L${from + wall.length} ${-wall.end}`} />
          </g>
        </g>
      ))}
    </SmallDrawing>
  );
};

export default GrainRoundTheCornerSmall;

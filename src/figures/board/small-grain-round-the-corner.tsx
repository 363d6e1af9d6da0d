/** The four walls side by side as one walks round the box, and lines of the figure as they run on or break. */
import { lineRound } from '../../calc/board/line-round.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';

/** Slope of the lines and angle of the rings, degrees. Ours. */
const figure = { slope: 3, rings: 75 } as const;

const GrainRoundTheCornerSmall: SmallFigure = ({ values: v }) => {
  const { outsideLength: length, outsideWidth: width, outsideHeight: high, kerf, planing } = v;
  const walls = lineRound(
    { length, width, kerf, planing, ...figure },
    v.wallsFrom === 'bookmatched',
    high * 0.15,
  );
  const apart = high / 4;
  let x = 0;
  return (
    <SmallDrawing view={[0, 0, 2 * (length + width), high * 2.6]}>
      {walls.map((wall, i) => {
        const at = x;
        x += wall.length;
        const id = `round-${i}`;
        return (
          <g key={id} transform={`translate(${at} ${high * 0.8})`}>
            <clipPath id={id}>
              <rect width={wall.length} height={high} />
            </clipPath>
            <rect class={i % 2 === 0 ? 'wood-end' : 'wood'} width={wall.length} height={high} />
            <g clip-path={`url(#${id})`}>
              <path
                class="ring"
                d={[-3, -2, -1, 1, 2, 3, 4]
                  .map(
                    (n) =>
                      `M0 ${high - wall.start - n * apart}L${wall.length} ${high - wall.end - n * apart}`,
                  )
                  .join('')}
              />
              <path class="curve" d={`M0 ${high - wall.start}L${wall.length} ${high - wall.end}`} />
            </g>
          </g>
        );
      })}
    </SmallDrawing>
  );
};

export default GrainRoundTheCornerSmall;

/** A wall of the example with its fingers, and how far each is out of place if half of them are cut from each edge. */
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import { SmallDrawing, type SmallFigure } from '../parts/SmallDrawing.tsx';
import { placeErrors } from './TurnedWall.tsx';

const TurnItRoundSmall: SmallFigure = ({ values: v }) => {
  const { outsideHeight: height, wall } = v;
  const errors = placeErrors(v, 'both');
  const longest = Math.max(...errors, 1e-6);
  const room = height * 0.6;
  return (
    <SmallDrawing view={[0, 0, height * 1.1, height]}>
      {fingerLayout(height, v.fingerWidth).map(({ from, to, wall: of }, i) => (
        <g key={from}>
          <rect
            class={of === 'first' ? 'wood' : 'wood-end'}
            x={wall / 2}
            y={height - to}
            width={2 * wall}
            height={to - from}
          />
          <rect
            class="mark"
            x={3 * wall}
            y={height - to + (to - from) * 0.3}
            width={(errors[i]! / longest) * room}
            height={(to - from) * 0.4}
          />
        </g>
      ))}
    </SmallDrawing>
  );
};

export default TurnItRoundSmall;

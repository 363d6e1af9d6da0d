/**
 * How far each finger of one wall is out of place: cut all from one edge, and half from each. Fingers in true
 * proportion, errors drawn larger by a factor that is stated. User units are screen pixels at the narrowest width.
 */
import type { Values } from '../../box/whole/index.ts';
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import { addedStepError } from '../../calc/joints/joint-fit.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

const [width, panel, stack, top, tall, room] = [350, 180, 34, 30, 190, 96] as const;
const factors = [1000, 500, 250, 200, 100, 50, 25, 20, 10, 5, 2];

/** Error of place of each finger, mm: counted from one edge, or from the nearer one. */
export function placeErrors(v: Values, from: 'one' | 'both'): number[] {
  const count = fingerLayout(v.outsideHeight, v.fingerWidth).length;
  return Array.from({ length: count }, (_, finger) => {
    const nearest = from === 'one' ? finger : Math.min(finger, count - 1 - finger);
    return addedStepError.compute({ i: Math.floor((nearest + 1) / 2), delta: v.stepError });
  });
}

export function TurnedWall({ values: v }: { values: Values }) {
  const fingers = fingerLayout(v.outsideHeight, v.fingerWidth);
  const scale = tall / v.outsideHeight;
  const sides = (['one', 'both'] as const).map((from) => ({ from, errors: placeErrors(v, from) }));
  const most = Math.max(...sides.flatMap(({ errors }) => errors), 1e-6);
  const factor = factors.find((by) => most * scale * by <= room) ?? 1;
  const thick = Math.max(1, Math.min(6, v.fingerWidth * scale * 0.5));
  return (
    <Drawing
      view={[-1, 0, width + 2, top + tall + 52]}
      title="Errors of place along one wall"
      description={sides
        .map(
          ({ from, errors }) =>
            `Cut from ${from === 'one' ? 'one edge' : 'both edges'}, the worst finger is ${said(Math.max(...errors), 'length', { as: 'fine' })} out of place`,
        )
        .join('. ')}
    >
      {sides.map(({ from, errors }, at) => (
        <g key={from} transform={`translate(${at * panel} ${top})`}>
          <Label x={0} y={-14} anchor="start" class="strong">
            {from === 'one' ? 'all from one edge' : 'half from each edge'}
          </Label>
          {fingers.map(({ from: low, to, wall }, i) => (
            <g key={low}>
              <rect
                class={wall === 'first' ? 'wood' : 'wood-end'}
                x={0}
                y={tall - to * scale}
                width={stack}
                height={(to - low) * scale}
              />
              <path
                class="error-bar"
                stroke-width={thick}
                d={`M${stack + 8} ${(tall - ((low + to) / 2) * scale).toFixed(1)}h${(errors[i]! * scale * factor).toFixed(1)}`}
              />
            </g>
          ))}
          <path class="axis" d={`M${stack + 8} 0V${tall}`} />
          <NumberLabel
            x={0}
            y={tall + 18}
            anchor="start"
            value={Math.max(...errors)}
            kind="length"
            as="fine"
            before="at most "
          />
        </g>
      ))}
      <Label x={0} y={top + tall + 42} anchor="start">
        {`errors drawn ${factor} times as large as the fingers`}
      </Label>
    </Drawing>
  );
}

/** What three coats of varnish and three of oil keep out, day by day: published figures, and a line through each. */
import { effectivenessAfter, finishes } from '../../calc/finish/finish.ts';
import { SmallDrawing, type SmallFigure, smallSheet } from '../parts/SmallDrawing.tsx';
import { AxisLines } from '../plot/Axis.tsx';
import { axesOn, curve, evenly } from '../plot/Plot.tsx';

const [width, height] = smallSheet;
const tested = [1, 7, 14] as const;
/** Days are drawn by their roots, as moisture creeps. */
const lastRoot = 4;
const axes = axesOn({ left: 6, right: width - 4, top: 0, bottom: height - 4 }, [0, lastRoot], [0, 100]);

const WhatAFinishDoesSmall: SmallFigure = () => (
  <SmallDrawing view={[0, 0, width, height]}>
    <AxisLines on={axes} />
    {(['Urethane varnish', 'Linseed oil'] as const).map((name) => {
      const { resistance, published } = finishes.find((one) => one.name === name && one.coats === 3)!;
      return (
        <g key={name}>
          <path
            class={name === 'Linseed oil' ? 'narrow' : 'curve'}
            d={curve(
              axes,
              evenly([0.3, lastRoot], 20).map((root) => [root, effectivenessAfter(root ** 2, resistance)]),
            )}
          />
          {published.map((percent, i) => (
            <circle
              key={tested[i]}
              class="ready"
              cx={axes.x(Math.sqrt(tested[i]!))}
              cy={axes.y(percent)}
              r="3"
            />
          ))}
        </g>
      );
    })}
  </SmallDrawing>
);

export default WhatAFinishDoesSmall;

/**
 * One width at six ratios, all in the same scale, outside and inside drawn. The one nearest to the reader's box is
 * marked with a heavy outline and a word.
 */
import type { Values } from '../../box/whole/index.ts';
import { insideRatio } from '../../calc/proportion/inside-ratio.ts';
import { namedRatios, nearestNamedRatio } from '../../calc/proportion/named-ratios.ts';
import { lengthFromRatio } from '../../calc/proportion/proportion.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { insideText, ratioText } from './ratio-text.ts';

const shown = namedRatios.filter(({ name }) => name !== 'golden' && name !== '5:3');

export function SixRatios({ values: v }: { values: Values }) {
  const width = Math.min(v.outsideLength, v.outsideWidth);
  const own = Math.max(v.outsideRatio, 1 / v.outsideRatio);
  const nearest = nearestNamedRatio(own, shown);
  const column = width * 2.12;
  const sheet = column + width * 2.06;
  const text = textSize(sheet);
  const row = width + text * 3.5;
  const tiles = shown.map((ratio, index) => {
    const length = lengthFromRatio.compute({ r: ratio.value, W: width });
    return {
      ...ratio,
      length,
      inside: insideRatio.compute({ L: length, W: width, t: v.wall }),
      x: (index % 2) * column + width * 0.02,
      y: Math.floor(index / 2) * row + text * 2.9,
    };
  });
  return (
    <Drawing
      view={[0, 0, sheet, row * 3]}
      title="One width at six ratios"
      description={tiles
        .map(
          ({ name, value, inside }) => `${name}: outside ${ratioText(value)}, inside ${ratioText(inside)}.`,
        )
        .join(' ')}
    >
      {tiles.map(({ name, value, length, inside, x, y }) => (
        <g key={name} class={name === nearest?.name ? 'current' : undefined}>
          <Label x={x} y={y - text * 2.1} anchor="start">
            {name === nearest?.name ? `${name}, nearest to yours` : name}
          </Label>
          <Label x={x} y={y - text * 0.8} anchor="start">
            {`outside ${ratioText(value)}, ${insideText(inside)}`}
          </Label>
          <rect class="wood" x={x} y={y} width={length} height={width} />
          {width > 2 * v.wall && (
            <rect
              class="inside"
              x={x + v.wall}
              y={y + v.wall}
              width={length - 2 * v.wall}
              height={width - 2 * v.wall}
            />
          )}
        </g>
      ))}
    </Drawing>
  );
}

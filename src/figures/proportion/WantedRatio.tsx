/** Two boxes of one width and one wall, in the same scale: above, the outside has the wanted ratio; below, the inside. */
import type { Values } from '../../box/whole/index.ts';
import { insideRatio, lengthForInsideRatio } from '../../calc/proportion/inside-ratio.ts';
import { lengthFromRatio, ratio } from '../../calc/proportion/proportion.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { insideText, ratioText } from './ratio-text.ts';

export function WantedRatio({ values: v }: { values: Values }) {
  const { outsideWidth: width, wall, wantedRatio: wanted } = v;
  const longer = lengthFromRatio.compute({ r: wanted, W: width });
  const shorter = lengthForInsideRatio.compute({ r_in: wanted, W: width, t: wall });
  const sheet = Math.max(longer, width * 1.6) / 0.96;
  const text = textSize(sheet);
  const row = width + text * 5;
  const boxes = [
    {
      length: longer,
      outside: wanted,
      inside: insideRatio.compute({ L: longer, W: width, t: wall }),
      held: 'outside',
    },
    { length: shorter, outside: ratio.compute({ L: shorter, W: width }), inside: wanted, held: 'inside' },
  ].filter(({ length }) => Number.isFinite(length));
  const edge = sheet * 0.02;
  return (
    <Drawing
      view={[-edge, 0, sheet, row * boxes.length]}
      class="tall"
      title="The wanted ratio outside, and inside"
      description={boxes
        .map((box) => `Outside ${ratioText(box.outside)}, ${insideText(box.inside)}.`)
        .join(' ')}
    >
      {boxes.map(({ length, outside, inside, held }, index) => {
        const y = index * row + text * 1.9;
        return (
          <g key={held}>
            <Label x={0} y={y - text} anchor="start" class={held === 'outside' ? 'strong' : undefined}>
              outside {ratioText(outside)}
            </Label>
            <rect class="wood" x={0} y={y} width={length} height={width} />
            {width > 2 * wall && (
              <rect
                class="inside"
                x={wall}
                y={y + wall}
                width={length - 2 * wall}
                height={width - 2 * wall}
              />
            )}
            {held === 'outside' ? (
              <rect class="wanted" x={0} y={y} width={length} height={width} />
            ) : (
              <rect
                class="wanted"
                x={wall}
                y={y + wall}
                width={length - 2 * wall}
                height={width - 2 * wall}
              />
            )}
            <Label x={length / 2} y={y + width / 2} class={held === 'inside' ? 'strong' : undefined}>
              {insideText(inside)}
            </Label>
            <Dimension
              from={[0, y + width + text * 0.9]}
              to={[length, y + width + text * 0.9]}
              value={length}
              side="after"
              text={text}
              digits={1}
              denominator={32}
            />
          </g>
        );
      })}
    </Drawing>
  );
}

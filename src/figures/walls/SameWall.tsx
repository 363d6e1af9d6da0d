/** The box from above, half as large, as it is, and twice as large, all with the same wall, to one scale. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { heaviness } from './heaviness.ts';

const sizes = [0.5, 1, 2] as const;
const names = ['half', 'this', 'double'] as const;

export function SameWall({ values: v }: { values: Values }) {
  const { outsideLength: length, outsideWidth: width, wall } = v;
  const longest = Math.max(length, width, v.outsideHeight);
  const gap = length * 0.14;
  const total = length * 3.5 + gap * 2;
  const text = textSize(total * 1.02);
  const words = sizes.map((size) => heaviness(wall, longest * size));
  const floor = width * 2;
  let right = 0;
  return (
    <Drawing
      view={[-total * 0.01, -text * 0.3, total * 1.02, floor + text * 6.6]}
      title="Three sizes with the same wall"
      description={sizes.map((_, i) => `${names[i]} size: ${words[i]}`).join(', ')}
    >
      {sizes.map((size, index) => {
        const [long, wide] = [length * size, width * size];
        const x = right;
        right += long + gap;
        const inside = [Math.max(0, long - 2 * wall), Math.max(0, wide - 2 * wall)] as const;
        return (
          <g key={size}>
            <rect class="wood" x={x} y={floor - wide} width={long} height={wide} />
            <rect class="inside" x={x + wall} y={floor - wide + wall} width={inside[0]} height={inside[1]} />
            {[
              names[index]!,
              words[index]!,
              2 * wall < wide ? said((100 * wall) / long, 'percent', { digits: 0 }) : 'no inside',
            ].map((word, line) => (
              <Label key={word} x={x + long / 2} y={floor + text * (1 + 1.4 * line)}>
                {word}
              </Label>
            ))}
          </g>
        );
      })}
      <Label x={total / 2} y={floor + text * 5.4}>
        wall as a share of the length
      </Label>
    </Drawing>
  );
}

/** The box from above: outside and inside rectangles in true proportion, each with its sizes and its ratio. */
import type { Values } from '../box/values.ts';
import { format } from '../units/index.ts';
import { Dimension } from './parts/Dimension.tsx';
import { Drawing, textSize } from './parts/Drawing.tsx';
import { Label } from './parts/Label.tsx';

const ratio = (value: number) => format(value, 'ratio', { system: 'mm' });

export function InsideOutside({ values: v }: { values: Values }) {
  const { outsideLength: length, outsideWidth: width, wall } = v;
  const text = textSize(length * 1.25);
  const margin = text * 2.2;
  return (
    <Drawing
      view={[-margin, -text, length + 1.5 * margin, width + margin + text]}
      title="The box from above"
      description={`Outside length to width ${ratio(v.outsideRatio)}, inside ${ratio(v.insideRatio)}.`}
    >
      <rect class="wood" x="0" y="0" width={length} height={width} />
      <rect class="inside" x={wall} y={wall} width={length - 2 * wall} height={width - 2 * wall} />
      <Label x={length / 2} y={width / 2 - text * 0.8}>
        inside {ratio(v.insideRatio)} : 1
      </Label>
      <Label x={length / 2} y={width / 2 + text * 0.8}>
        outside {ratio(v.outsideRatio)} : 1
      </Label>
      <Dimension
        from={[0, width + text * 1.6]}
        to={[length, width + text * 1.6]}
        value={length}
        text={text}
      />
      <Dimension from={[-text * 0.8, 0]} to={[-text * 0.8, width]} value={width} text={text} />
    </Drawing>
  );
}

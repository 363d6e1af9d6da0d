/**
 * The box cut through, seen from the front, in true proportion: its walls thicken and the inside shrinks. Below it a
 * scale of wall thickness with the usual band for this size.
 */

import { fields } from '../../box/subjects/inputs.ts';
import type { Values } from '../../box/whole/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { bothUnits, said } from '../parts/Quantity.tsx';
import { heaviness } from './heaviness.ts';
import { Section } from './Section.tsx';

export function WallSection({ values: v }: { values: Values }) {
  const { outsideLength: length, outsideHeight: height, wall } = v;
  const text = textSize(length * 1.12);
  const top = height + text * 5.4;
  const word = heaviness(wall, Math.max(length, v.outsideWidth, height));
  return (
    <Drawing
      view={[-length * 0.06, -text * 0.5, length * 1.12, top + text * 4]}
      title="The box cut through, seen from the front"
      description={`Walls ${said(wall, 'length')} thick are ${word} for this size. The inside is ${said(v.insideLength, 'length')} long.`}
    >
      <Section values={v} />
      {v.insideLength > 7 * text && v.insideHeight > 2 * text && (
        <Dimension
          from={[wall, height / 2 + text * 0.6]}
          to={[length - wall, height / 2 + text * 0.6]}
          value={v.insideLength}
          text={text}
          before="inside "
        />
      )}
      <Dimension
        from={[0, height + text * 1.8]}
        to={[length, height + text * 1.8]}
        value={length}
        text={text}
        before="outside "
      />
      <Scale v={v} word={word} top={top} text={text} />
    </Drawing>
  );
}

/** From the thinnest to the thickest wall that can be entered: the usual band, and a mark at this wall. */
function Scale({ v, word, top, text }: { v: Values; word: string; top: number; text: number }) {
  const { low, high } = fields.wall;
  const length = v.outsideLength;
  const at = (thickness: number) => ((thickness - low) / (high - low)) * length;
  const [from, to] = [at(v.thinnestUsualWall), at(v.thickestUsualWall)];
  const bar = text * 1.4;
  const mark = at(v.wall);
  const half = text * 0.4;
  const within = (x: number, room: number) => Math.min(Math.max(x, room * text), length - room * text);
  const first = bothUnits(v.thinnestUsualWall, 'length', { unit: false, digits: 1, denominator: 32 });
  const last = bothUnits(v.thickestUsualWall, 'length', { digits: 1, denominator: 32 });
  const below = { x: within((from + to) / 2, 5.5), y: top + bar + text };
  return (
    <>
      <rect class="inside" x="0" y={top} width={length} height={bar} />
      <rect class="usual" x={from} y={top} width={to - from} height={bar} />
      <path class="thin" d={`M${from} ${top}v${bar}M${to} ${top}v${bar}`} />
      <Label x={from / 2} y={top + bar / 2}>
        thin
      </Label>
      <Label x={(to + length) / 2} y={top + bar / 2}>
        heavy
      </Label>
      <path
        class="curve"
        d={`M${mark} ${top + bar}V${top}l${-half} ${-half * 1.4}h${2 * half}l${-half} ${half * 1.4}`}
      />
      <NumberLabel
        x={within(mark, 5)}
        y={top - text * 1.3}
        value={v.wall}
        kind="length"
        denominator={32}
        before="wall "
        after={`, ${word}`}
      />
      <Label {...below} class="mm">
        usual {first.mm} to {last.mm}
      </Label>
      <Label {...below} class="inch">
        usual {first.inch} to {last.inch}
      </Label>
    </>
  );
}

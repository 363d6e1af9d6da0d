/**
 * The box from above: outside and inside in true proportion, each with its sizes and its ratio. The hatched strip is
 * what the inside is longer than a rectangle of the outside's ratio: 2t (r - 1).
 */

import type { Values } from '../../box/whole/index.ts';
import { lengthFromRatio } from '../../calc/proportion/proportion.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { insideText, ratioText } from './ratio-text.ts';

export function InsideOutside({ values: v }: { values: Values }) {
  // The longer side lies level, whichever of them the reader calls the length.
  const long = Math.max(v.outsideLength, v.outsideWidth);
  const short = Math.min(v.outsideLength, v.outsideWidth);
  const { wall } = v;
  const [longInside, shortInside] = [long - 2 * wall, short - 2 * wall];
  const sheet = long / 0.87;
  const text = textSize(sheet);
  const sameShape = lengthFromRatio.compute({ r: long / short, W: shortInside });
  const surplus = longInside - sameShape;
  const isOpen = shortInside > 0;
  const holdsText = shortInside > text * 1.6;
  const isRoomy = shortInside > text * 4.5;
  const top = -text * 1.8;
  return (
    <Drawing
      view={[-text * 2.5, top, sheet, short - top + text * 2.6]}
      title="The box from above"
      description={
        isOpen
          ? `Outside ${said(long, 'length')} × ${said(short, 'length')}, walls ${said(wall, 'length')}. Outside length to width ${ratioText(v.outsideRatio)}, inside ${ratioText(v.insideRatio)}.`
          : 'The walls meet: no inside is left.'
      }
    >
      <rect class="wood" x="0" y="0" width={long} height={short} />
      {isOpen && (
        <>
          <rect class="inside" x={wall} y={wall} width={longInside} height={shortInside} />
          <rect class="surplus" x={wall + sameShape} y={wall} width={surplus} height={shortInside} />
          {surplus > 0.05 && (
            <>
              <line
                class="thin"
                x1={wall + sameShape + surplus / 2}
                y1={wall}
                x2={wall + sameShape + surplus / 2}
                y2={-text * 0.35}
              />
              <NumberLabel
                x={long}
                y={-text}
                anchor="end"
                value={surplus}
                kind="length"
                denominator={32}
                before="longer by "
              />
            </>
          )}
        </>
      )}
      <Label x={0} y={-text} anchor="start">
        {`outside ${ratioText(v.outsideRatio)}${holdsText ? '' : `, ${insideText(v.insideRatio)}`}`}
      </Label>
      {holdsText && (
        <Label class="strong" x={wall + sameShape / 2} y={short / 2 - (isRoomy ? text * 0.5 : 0)}>
          {insideText(v.insideRatio)}
        </Label>
      )}
      {isRoomy && (
        <Dimension
          from={[wall, wall + shortInside - text * 0.8]}
          to={[wall + longInside, wall + shortInside - text * 0.8]}
          value={longInside}
          text={text}
        />
      )}
      {isRoomy && (
        <Dimension
          from={[wall + text * 0.8, wall]}
          to={[wall + text * 0.8, wall + shortInside]}
          value={shortInside}
          side="after"
          text={text}
        />
      )}
      <Dimension
        from={[0, short + text * 0.9]}
        to={[long, short + text * 0.9]}
        value={long}
        side="after"
        text={text}
      />
      <Dimension from={[-text * 0.8, 0]} to={[-text * 0.8, short]} value={short} text={text} />
    </Drawing>
  );
}

/**
 * One finger-jointed corner, its two walls laid flat side by side and pulled apart, in true proportion. Fingers are
 * counted from the marked edge at the bottom; what is left at the top is hatched and named. A dashed line shows the
 * nearest height that comes out whole and odd.
 */
import type { Values } from '../../box/whole/index.ts';
import { type Finger, fingerLayout } from '../../calc/joints/finger-layout.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Outline of one wall: a body from `back` to `shoulder`, and its fingers as far as `tip`. Y runs down from the top edge. */
function wallPath(
  fingers: readonly Finger[],
  wall: Finger['wall'],
  x: { back: number; shoulder: number; tip: number },
  height: number,
): string {
  const edge = fingers
    .map(({ from, to, wall: of }) => {
      const at = of === wall ? x.tip : x.shoulder;
      return `L${at} ${height - from}L${at} ${height - to}`;
    })
    .join('');
  return `M${x.back} ${height}${edge}L${x.back} 0Z`;
}

export function FingerLayout({ values: v }: { values: Values }) {
  const { outsideHeight: height, wall, oddHeight, oddCount } = v;
  const fingers = fingerLayout(height, v.fingerWidth);
  const gap = wall * 0.7;
  const body = (Math.max(1.35 * height, 8 * wall, 40) - 2 * wall - gap) / 2;
  const width = 2 * (body + wall) + gap;
  const text = textSize(width * 1.13);
  const margin = text * 2;
  const top = Math.min(0, height - oddHeight) - text * 2;
  const mate = 2 * wall + gap;
  const last = fingers.at(-1);
  const isWhole = last?.whole ?? true;
  const isOdd = isWhole && fingers.length % 2 === 1;
  const tips = last?.wall === 'second' ? [wall + gap, mate] : [0, wall];
  return (
    <Drawing
      view={[-body - margin, top, width + 1.5 * margin, height - top + text * 2]}
      title="Finger layout of one corner"
      description={`${said(v.fingerCount, 'number', { digits: 2 })} fingers in the height; ${
        isWhole ? 'the last one is whole' : `${said(v.edgeSliver, 'length')} is left at the far edge`
      }.`}
    >
      <path class="wood" d={wallPath(fingers, 'first', { back: -body, shoulder: 0, tip: wall }, height)} />
      <path
        class="wood"
        d={wallPath(fingers, 'second', { back: mate + body, shoulder: mate, tip: wall + gap }, height)}
      />
      {!isWhole && last && (
        <rect
          x={tips[0]}
          y={0}
          width={wall}
          height={last.to - last.from}
          fill="url(#jam)"
          class="part-finger"
        />
      )}
      {last && (
        <NumberLabel
          x={wall}
          y={-text}
          anchor="end"
          value={last.to - last.from}
          kind="length"
          before={isWhole ? 'whole finger ' : v.edgeSliver < v.fingerWidth / 2 ? 'sliver ' : 'part finger '}
        />
      )}
      {!isOdd && (
        <>
          <line
            class="hidden-line"
            x1={mate + body * 0.35}
            x2={mate + body}
            y1={height - oddHeight}
            y2={height - oddHeight}
          />
          <Label
            x={mate + body - text * 0.4}
            y={height - oddHeight + (oddHeight < height ? text : -text)}
            anchor="end"
          >
            {oddCount} whole
          </Label>
        </>
      )}
      <Label x={-body / 2} y={height / 2}>
        one wall
      </Label>
      <Label x={mate + body / 2} y={height / 2}>
        its mate
      </Label>
      <path class="force" d={`M${-body} ${height}H${wall}M${mate} ${height}h${body}`} />
      <Label x={-body / 2} y={height + text}>
        marked edge
      </Label>
      <NumberLabel
        x={mate + body}
        y={height + text}
        anchor="end"
        value={v.fingerWidth}
        kind="length"
        before="fingers "
      />
      <Dimension
        from={[-body - text * 0.6, 0]}
        to={[-body - text * 0.6, height]}
        value={height}
        text={text}
      />
    </Drawing>
  );
}

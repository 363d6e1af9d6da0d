/** The lens over the lid's edge: what it is laid on, the same drawing larger, the reader's mark, the rule, and what August brings. */
import type { ComponentChildren } from 'preact';
import { Label, NumberLabel } from '../../parts/Label.tsx';
import { RuleScale } from '../../parts/RuleScale.tsx';
import { type AugustLayout, augustRange } from './august-layouts.ts';
import type { AugustProps } from './LidAugust.tsx';

interface Props extends AugustProps {
  on: AugustLayout;
  /** Where on the sheet the lid's edge and the top of its groove stand in the box. */
  edge: readonly [x: number, y: number];
  /** The box, mm. */
  picture: ComponentChildren;
}

export function AugustLens({ on, edge, picture, values: v, system, mark, open }: Props) {
  const { lens, zero, above, line, times, whole, frame } = on;
  const scale = whole * times;
  const [width, height] = [lens.right - lens.left, lens.foot - lens.top];
  const place = (mm: number) => zero + mm * scale;
  const { lidPlay: play, lidSwelling: grown } = v;
  const jams = v.lidPlayDamp < 0;
  /** What the lens is laid on, on the sheet, and in the box's own millimeters. */
  const [x, y] = [edge[0] - (zero - lens.left) / times, edge[1] - above / times];
  const mouth = v.wall - v.lidGrooveDepth;
  const view = [
    mouth + v.lidWidth - (zero - lens.left) / scale,
    v.lidLip - above / scale,
    width / scale,
    height / scale,
  ];
  const lidTop = lens.top + above + (v.lidThickness - v.lidTongue) * scale;
  const end = place(play);
  const words = { x: (open ? Math.max(end, place(grown)) : end) + line * 0.6, anchor: 'start' as const };
  const beside = lens.left > edge[0];
  return (
    <>
      <path
        class="thin"
        d={
          beside
            ? `M${x + width / times} ${y}L${lens.left} ${lens.top}M${x + width / times} ${y + height / times}L${lens.left} ${lens.foot}`
            : `M${x} ${y + height / times}L${lens.left} ${lens.top}M${x + width / times} ${y + height / times}L${lens.right} ${lens.top}`
        }
      />
      <rect class="lens" x={x} y={y} width={width / times} height={height / times} />
      <rect class="inside" x={lens.left} y={lens.top} width={width} height={height} />
      <svg
        x={lens.left}
        y={lens.top}
        width={width}
        height={height}
        viewBox={view.join(' ')}
        aria-hidden="true"
      >
        {picture}
      </svg>
      {open && jams && (
        <rect
          class="wood jammed arrives"
          x={end}
          y={lidTop}
          width={place(grown) - end}
          height={lens.foot - lidTop}
        />
      )}
      {open && <path class="hidden-line" d={`M${zero} ${lidTop}V${lens.foot}`} />}
      {mark !== undefined && (
        <path class="ghost" d={`M${zero} ${lidTop}H${place(mark)}V${lens.foot}H${zero}`} />
      )}
      <Label class="on-wood" x={lens.left + 10} y={lens.top + above / 2} anchor="start">
        {`${times} times larger`}
      </Label>
      <Label class="on-lid" x={lens.left + 10} y={lidTop + line} anchor="start">
        lid
      </Label>
      <Label
        class="on-wood"
        x={place(v.lidPlay - v.lidGrooveDepth + v.wall) - 10}
        y={lens.foot - line * 0.8}
        anchor="end"
      >
        wall
      </Label>
      {open ? (
        <>
          <NumberLabel
            {...words}
            class="on-wood strong"
            y={lidTop + line}
            value={grown}
            kind="length"
            as="exact"
            before="August: "
          />
          <NumberLabel
            {...words}
            class={`on-wood strong ${jams ? 'warning' : ''}`}
            y={lidTop + 2 * line}
            value={Math.abs(v.lidPlayDamp)}
            kind="length"
            as="exact"
            after={jams ? ' too much' : ' to spare'}
          />
          <Label {...words} class={`on-wood strong ${jams ? 'warning' : ''}`} y={lidTop + 3 * line}>
            {jams ? 'it jams' : 'it slides'}
          </Label>
        </>
      ) : (
        <>
          <path class="axis" d={`M${zero} ${lidTop + line}H${end + line * 0.4}`} />
          <NumberLabel
            {...words}
            class="on-wood"
            y={lidTop + line}
            value={play}
            kind="length"
            as="exact"
            after=" to spare"
          />
        </>
      )}
      <RuleScale
        from={[zero, lens.foot]}
        to={[place(augustRange.high), lens.foot]}
        length={augustRange.high}
        system={system}
      />
      {mark !== undefined && (
        <>
          <path class="mark-caret" d={`M${place(mark)} ${lens.foot + 29}l6 9h-12z`} />
          <NumberLabel
            class="mark-words"
            x={Math.min(Math.max(place(mark), 60), frame.width - 60)}
            y={lens.foot + 50}
            value={mark}
            kind="length"
            digits={1}
            denominator={64}
            before="your mark: "
          />
        </>
      )}
    </>
  );
}

/**
 * A sliding lid in a box cut across, and its right edge under a lens: how far the damp of August pushes it. What the lens
 * shows is the same drawing, so many times larger, so nothing in it is out of place.
 */
import type { Values } from '../../../box/whole/index.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { Drawing } from '../../parts/Drawing.tsx';
import { Label, NumberLabel } from '../../parts/Label.tsx';
import { said } from '../../parts/Quantity.tsx';
import { AugustLens } from './AugustLens.tsx';
import { type AugustLayout, narrowSheet, wideSheet } from './august-layouts.ts';
import { EndOfBox } from './EndOfBox.tsx';

export interface AugustProps {
  values: Values;
  system: UnitSystem;
  /** Where the reader put the mark, mm; undefined before. */
  mark: number | undefined;
  /** Nothing of August is drawn before. */
  open: boolean;
}

const fine = (value: number) => said(value, 'length', { as: 'fine' });

function August({ on, ...props }: AugustProps & { on: AugustLayout }) {
  const { values: v, open } = props;
  const { frame, whole, box, lens, line } = on;
  const wide = v.outsideWidth * whole;
  const left = box.middle - wide / 2;
  const shown = Math.min(box.shown, v.outsideHeight);
  const isOpen = open && Number.isFinite(v.lidSwelling);
  const picture = <EndOfBox values={v} grown={isOpen ? v.lidSwelling : 0} />;
  // The lid stands at the bottom of the left groove.
  const [from, to] = [v.wall - v.lidGrooveDepth, v.wall - v.lidGrooveDepth + v.lidWidth].map(
    (x) => left + x * whole,
  ) as [number, number];
  return (
    <Drawing
      view={[0, 0, frame.width, frame.height]}
      title="A lid in its grooves, seen from the end of the box"
      description={`The lid is ${said(v.lidWidth, 'length', { digits: 0, denominator: 16 })} wide and ${fine(v.lidPlay)} are left in its grooves. ${
        isOpen
          ? `In August its edge stands ${fine(v.lidSwelling)} further out${v.lidPlayDamp < 0 ? ': more than was left, so it jams' : ''}.`
          : 'Where its edge will stand in August is not drawn yet.'
      }`}
      class={on.atSize ? 'at-size' : ''}
    >
      <svg
        x={left}
        y={box.top}
        width={wide}
        height={shown * whole}
        viewBox={`0 0 ${v.outsideWidth} ${shown}`}
        overflow={shown < v.outsideHeight ? 'hidden' : 'visible'}
        aria-hidden="true"
      >
        {picture}
      </svg>
      <path class="thin" d={`M${from} ${box.top - 4}v-12M${to} ${box.top - 4}v-12`} />
      <g class="dimension">
        <line
          x1={from}
          x2={to}
          y1={box.top - 10}
          y2={box.top - 10}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
        <NumberLabel
          x={(from + to) / 2}
          y={box.top - 10 - line * 0.8}
          value={v.lidWidth}
          kind="length"
          digits={0}
          denominator={16}
          after=" wide in March"
        />
      </g>
      {shown === v.outsideHeight && (
        <Label class="quiet-label" x={box.middle} y={box.top + shown * whole + 24}>
          the box, cut across
        </Label>
      )}
      <AugustLens
        on={on}
        edge={[to, box.top + v.lidLip * whole]}
        picture={picture}
        {...props}
        open={isOpen}
      />
      <rect
        class="lens"
        x={lens.left}
        y={lens.top}
        width={lens.right - lens.left}
        height={lens.foot - lens.top}
      />
    </Drawing>
  );
}

/** For a phone or a column of text. */
export const LidAugust = (props: AugustProps) => <August on={narrowSheet} {...props} />;
/** For a wide page. */
export const LidAugustWide = (props: AugustProps) => <August on={wideSheet} {...props} />;

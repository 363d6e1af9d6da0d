/**
 * The sheet a figure is drawn on: an SVG whose user unit is fixed by the figure, with a title and a description
 * that a screen reader speaks. Text size follows from the width, so that labels stay readable on a phone:
 * at 350 CSS pixels of width the text is `13 px` high.
 */
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { toDecimals } from '../../units/index.ts';
import { hearing } from './Quantity.tsx';

/** Height of label text in user units for a drawing so wide: 13 px on a 350 px wide phone screen. */
export const textSize = (width: number) => (width / 350) * 13;

export interface DrawingProps {
  /** Left, top, width and height in user units. */
  view: readonly [x: number, y: number, width: number, height: number];
  /** What it shows, in a few words. */
  title: string;
  /** The same facts as the picture, in a sentence or two; its numbers by `said`. */
  description: string;
  class?: string;
  /**
   * Of a drawing that wakes later than what is around it, one on a page: counted ids go by the order of waking, and would
   * then be those that others were built with.
   */
  id?: string | undefined;
  /** Height of its text in user units, where that does not follow from the width: one unit is one px there. */
  text?: number;
  children: ComponentChildren;
}

export const Drawing = ({ id, ...props }: DrawingProps) =>
  id === undefined ? <CountedDrawing {...props} /> : <Sheet {...props} id={id} />;

const CountedDrawing = (props: Omit<DrawingProps, 'id'>) => <Sheet {...props} id={useId()} />;

function Sheet({ id, view, title, description, text, children, ...rest }: DrawingProps & { id: string }) {
  const [mm, inch] = [hearing(description, 'mm'), hearing(description, 'inch')];
  return (
    <svg
      viewBox={view.map((number) => toDecimals(number, 2)).join(' ')}
      role="img"
      aria-labelledby={`${id}t ${id}d`}
      class={`drawing ${text ? 'own-text' : ''} ${rest.class ?? ''}`}
      style={{ fontSize: `${toDecimals(text ?? textSize(view[2]), 2)}px`, '--w': view[2] }}
    >
      <title id={`${id}t`}>{title}</title>
      {/* Not `desc`, of which no reader hears a part: here the style sheet leaves out the other units. */}
      <g id={`${id}d`} class="spoken">
        {mm === inch ? (
          <text>{mm}</text>
        ) : (
          <>
            <text class="mm">{mm}</text>
            <text class="inch">{inch}</text>
          </>
        )}
      </g>
      {children}
    </svg>
  );
}

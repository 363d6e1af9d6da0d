/** Text in a drawing: a word, or a number in both units. Sizes are in the drawing's own user units. */
import type { ComponentChildren } from 'preact';
import type { Kind } from '../../units/index.ts';
import { bothUnits } from './Quantity.tsx';

interface Place {
  x: number;
  y: number;
  anchor?: 'start' | 'middle' | 'end';
  /** Turned by so many degrees about its place. */
  turn?: number;
  class?: string;
}

const at = ({ x, y, anchor = 'middle', turn }: Place) => ({
  x,
  y,
  'text-anchor': anchor,
  'dominant-baseline': 'central',
  ...(turn ? { transform: `rotate(${turn} ${x} ${y})` } : {}),
});

/** A word or two in a drawing. */
export function Label({ children, ...place }: Place & { children: ComponentChildren }) {
  return (
    <text {...at(place)} class={`label ${place.class ?? ''}`}>
      {children}
    </text>
  );
}

/** A number in a drawing, in the reader's units; `before` and `after` are words around it. */
export function NumberLabel({
  value,
  kind,
  digits,
  denominator,
  as,
  round,
  before = '',
  after = '',
  ...place
}: Place & {
  value: number;
  kind: Kind;
  digits?: 0 | 1 | 2;
  denominator?: 8 | 16 | 32 | 64 | 1000;
  /**
   * A size on the reader's ruler; or a small difference, with the mark of the rule beside it, short: "0.040 in (1/32 +)";
   * or that alone, where room is short.
   */
  as?: 'size' | 'fine' | 'exact';
  /** Which way it is rounded, as in the words about it. */
  round?: 'up' | 'down';
  before?: string;
  after?: string;
}) {
  const { mm, inch } = bothUnits(value, kind, { digits, denominator, as, round, short: true });
  if (inch === undefined)
    return (
      <text {...at(place)} class={`label ${place.class ?? ''}`}>
        {before + mm + after}
      </text>
    );
  return (
    <>
      <text {...at(place)} class={`label mm ${place.class ?? ''}`}>
        {before + mm + after}
      </text>
      <text {...at(place)} class={`label inch ${place.class ?? ''}`}>
        {before + inch + after}
      </text>
    </>
  );
}

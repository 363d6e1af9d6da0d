/**
 * The sheet of a rule's small figures: as wide as half a phone, one unit a pixel there, so that two states stand side by
 * side. They are drawn while the site is built, from the worked examples of the rule, and cost a browser nothing.
 */
import type { ComponentChildren } from 'preact';
import type { Kind } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';

export const sheetWidth = 168;

interface Props {
  /** What it shows, in a few words; its caption says the rest. */
  title: string;
  height?: number;
  children: ComponentChildren;
}

export const Sketch = ({ title, height = 108, children }: Props) => (
  <Drawing view={[0, 0, sheetWidth, height]} title={title} description="" text={13}>
    {children}
  </Drawing>
);

interface Place {
  x: number;
  y: number;
  anchor?: 'start' | 'middle' | 'end';
}

/** A symbol of the rule's formula beside what it stands for; `sub` stands low. */
export const Sym = ({ of, sub, ...place }: Place & { of: string; sub?: string }) => (
  <Label {...place} class="on-lines of-formula">
    {of}
    {sub && (
      <tspan dy="3" font-size="11">
        {sub}
      </tspan>
    )}
  </Label>
);

/** A number with its symbol before it: "p 0.74 mm". */
export const Num = ({
  of = '',
  ...number
}: Place & { of?: string; value: number; kind?: Kind; digits?: 0 | 1 | 2; as?: 'exact' }) => (
  <NumberLabel class="on-lines" kind="length" before={of && `${of} `} {...number} />
);

/** A word. */
export const Word = ({ of, ...place }: Place & { of: string }) => (
  <Label {...place} class="on-lines">
    {of}
  </Label>
);

/** A measured length with arrowheads, level or upright; what it is stands beside it. */
export const Between = ({ from, to }: { from: readonly [number, number]; to: readonly [number, number] }) => (
  <path
    class="thin"
    d={`M${from.join(' ')}L${to.join(' ')}`}
    marker-start="url(#arrow)"
    marker-end="url(#arrow)"
  />
);

/** A force or a movement. */
export const Push = ({ from, to }: { from: readonly [number, number]; to: readonly [number, number] }) => (
  <path class="force" d={`M${from.join(' ')}L${to.join(' ')}`} marker-end="url(#arrow)" />
);

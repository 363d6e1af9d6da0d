/** The glass on the bench: the chosen part cut through and enlarged, with its numbers. Its units are px of the screen. */
import { Drawing } from '../../parts/Drawing.tsx';
import { said } from '../../parts/Quantity.tsx';
import { GlassPane, text } from './GlassPane.tsx';
import type { Pane } from './pane.ts';

interface Props {
  panes: readonly Pane[];
  title: string;
  /** px */
  width: number;
  height: number;
}

/** Width to height of what can be shown on a glass of this size, its numbers aside. */
export const aspectOf = (width: number, height: number): number =>
  Math.max(0.4, (width - 80) / (height - 56));

export function Glass({ panes, title, width, height }: Props) {
  /** Two panes side by side, or one over the other where that is narrow. */
  const beside = width >= 360;
  const count = panes.length;
  const low = !beside && count > 1;
  return (
    <Drawing
      id="glass"
      view={[0, 0, width, height]}
      title={title}
      description={`Cut through and enlarged. ${panes
        .map(
          ({ caption, measures }) =>
            `${caption}: ${measures.map(({ before = '', value, as }) => before + said(value, 'length', { as })).join(', ')}.`,
        )
        .join(' ')}`}
      class="glass-drawing"
      text={text}
    >
      {panes.map((pane, place) => (
        <GlassPane
          key={pane.caption}
          id={`glass-pane-${place}`}
          pane={low ? { ...pane, measures: pane.measures.slice(0, 1) } : pane}
          left={beside ? (place * width) / count : 0}
          top={beside ? 0 : (place * height) / count}
          width={beside ? width / count : width}
          height={beside ? height : height / count}
        />
      ))}
    </Drawing>
  );
}

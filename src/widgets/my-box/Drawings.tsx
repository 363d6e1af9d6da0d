/** The drawings of the box for paper and files. */
import type { ReadonlySignal } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useRef } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { CornerSection } from '../../figures/views/CornerSection.tsx';
import { Exploded } from '../../figures/views/Exploded.tsx';
import { Isometric } from '../../figures/views/Isometric.tsx';
import { LidOpenClosed } from '../../figures/views/LidOpenClosed.tsx';
import { Views } from '../../figures/views/Views.tsx';
import { SaveDrawings } from './SaveDrawings.tsx';

const WithGrain = ({ design }: { design: Design }) => <Isometric design={design} grain />;

const figures: readonly (readonly [string, FunctionComponent<{ design: Design }>])[] = [
  ['Three views with sizes', Views],
  ['Closed', WithGrain],
  ['Taken apart', Exploded],
  ['The lid, closed and open', LidOpenClosed],
  ['Corners, cut through the grooves', CornerSection],
];

export function Drawings({ design }: { design: ReadonlySignal<Design> }) {
  const all = useRef<HTMLDivElement>(null);
  const now = design.value;
  if (!now.plan) return <p class="message">No room is left between the walls: there is nothing to draw.</p>;
  return (
    <>
      <SaveDrawings box={now.box} within={all} />
      <p class="help">
        Growth rings are made up from one log; where each part lay on the boards decides what they look like.
      </p>
      <div class="drawings" ref={all}>
        {figures.map(([title, Figure]) => (
          <figure key={title}>
            <figcaption>{title}</figcaption>
            <Figure design={now} />
          </figure>
        ))}
      </div>
    </>
  );
}

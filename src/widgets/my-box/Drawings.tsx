/** The drawings of the box. Those that are folded away stay as they were until they are opened, so that a slider moves only what is seen. */
import type { FunctionComponent } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import type { Design } from '../../box/design/design.ts';
import { CornerSection } from '../../figures/box/CornerSection.tsx';
import { Exploded } from '../../figures/box/Exploded.tsx';
import { Isometric } from '../../figures/box/Isometric.tsx';
import { LidOpenClosed } from '../../figures/box/LidOpenClosed.tsx';
import { Views } from '../../figures/box/Views.tsx';
import { useRested } from '../kit/follow.ts';
import { useOpen } from '../kit/use-open.ts';

type Figure = FunctionComponent<{ design: Design }>;

function Folded({
  title,
  figure: FigureOf,
  design,
  unfolded,
}: {
  title: string;
  figure: Figure;
  design: Design;
  unfolded?: true;
}) {
  const { open, fold } = useOpen(unfolded ?? false);
  const last = useRef(design);
  if (open.value) last.current = design;
  const shown = last.current;
  return (
    <details open={open.value} {...fold}>
      <summary>{title}</summary>
      {useMemo(
        () => (
          <FigureOf design={shown} />
        ),
        [shown],
      )}
    </details>
  );
}

/** How long the box must stay as it is before the growth rings are drawn on it, ms: a slider need not wait for them. */
const rest = 200;

export function Drawings({ design }: { design: Design }) {
  const grain = useRested(design, rest) === design;
  const isometric = useMemo(() => <Isometric design={design} grain={grain} />, [design, grain]);
  if (!design.plan)
    return <p class="message">No room is left between the walls: there is nothing to draw.</p>;
  return (
    <div class="drawings">
      {isometric}
      <p class="help">
        Growth rings are made up from one log; where each part lay on the boards decides what they look like.
      </p>
      <Folded title="Three views with sizes" figure={Views} design={design} unfolded />
      <Folded title="Taken apart" figure={Exploded} design={design} />
      <Folded title="The lid, closed and open" figure={LidOpenClosed} design={design} />
      <Folded title="Corners, cut through the grooves" figure={CornerSection} design={design} />
    </div>
  );
}

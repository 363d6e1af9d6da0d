/**
 * A corner cut level through the bottom's groove and another through the lid's, seen from above: what each groove meets
 * there, and whether a cut that runs through would leave a hole in the outside. For finger joints also the corner from
 * outside, opened flat.
 */
import type { Design } from '../../box/design/design.ts';
import { Measured } from '../box/Measured.tsx';
import type { Placing } from '../box/paths.ts';
import { SectionPicture } from '../box/SectionPicture.tsx';
import { CornerXray } from '../grooves/CornerXray.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { describe, isStopped, type Panel, panelOf, shown } from './corner-cuts.ts';

const sheet = 350;
const text = 13;
const half = 160;
function OnePanel({ panel, left, wall, depth }: { panel: Panel; left: number; wall: number; depth: number }) {
  const scale = half / (shown * wall);
  const foot = 58 + half;
  const side = panel.end === 'front' ? 'left side' : 'right side';
  const placing: Placing = {
    scale,
    x: left + half - scale * panel.corner[0],
    y: foot - scale * panel.corner[1],
  };
  const stopped = panel.grooves.filter((groove) => isStopped(groove, panel.end));
  const [near, far] = [(wall - depth) * scale, wall * scale];
  const corner = left + half;
  return (
    <g>
      <Label x={left} y={9} anchor="start" class="strong">
        {panel.of} groove
      </Label>
      <Label x={left} y={26} anchor="start">
        {panel.end === 'front' ? 'front left' : 'back right'} corner
      </Label>
      <SectionPicture cuts={panel.cuts} placing={placing} />
      {stopped.map((groove) => {
        // The end lies level on the sheet, the side upright.
        const level = groove.wall === panel.end;
        return (
          <rect
            key={groove.wall}
            class="hidden-line"
            x={level ? corner - near : corner - far}
            y={level ? foot - far : foot - near}
            width={level ? near : far - near}
            height={level ? far - near : near}
          />
        );
      })}
      <Label class="on-lines" x={left + half * 0.3} y={58 + half * 0.3}>
        {panel.of}
      </Label>
      <Label class="on-lines" x={left + half * 0.3} y={foot - far * 0.3}>
        {panel.end}
      </Label>
      <Label class="on-lines" x={corner - far * 0.3} y={58 + half * 0.35} turn={-90}>
        {side}
      </Label>
      <Measured
        from={[corner - near, 58]}
        to={[corner - far, 58]}
        away={-10}
        value={depth}
        text={text}
        before="depth "
      />
      <Measured
        from={[corner, foot]}
        to={[corner - far, foot]}
        away={14}
        value={wall}
        text={text}
        before="wall "
      />
      <Label x={left} y={foot + 44} anchor="start">
        {stopped.length > 0 ? 'stopped: through, it' : 'ends in the joint:'}
      </Label>
      <Label x={left} y={foot + 60} anchor="start">
        {stopped.length > 0 ? 'would leave a hole' : 'no hole shows'}
      </Label>
    </g>
  );
}

export function CornerSection({ design }: { design: Design }) {
  if (!design.plan) return null;
  const panels = [panelOf(design, 'bottom', 'front'), panelOf(design, 'lid', 'back')].flatMap(
    (panel) => panel ?? [],
  );
  const { wall, bottomBand, lidBand } = design.plan;
  return (
    <>
      <Drawing
        view={[0, 0, sheet, half + 130]}
        title="Corners cut level through the grooves, from above"
        description={panels.map(describe).join(' ')}
      >
        {panels.map((panel, index) => (
          <OnePanel
            key={panel.of}
            panel={panel}
            left={index * (half + 22)}
            wall={wall}
            depth={panel.of === 'bottom' ? bottomBand.depth : lidBand.depth}
          />
        ))}
      </Drawing>
      {design.values.joint === 'finger' &&
        bottomBand.seat === 'groove' &&
        bottomBand.high > bottomBand.low && (
          <>
            <p class="says">From outside, if the bottom’s groove were cut right through:</p>
            <CornerXray
              values={{
                ...design.values,
                bottomLip: bottomBand.low,
                bottomTongue: bottomBand.high - bottomBand.low,
              }}
            />
          </>
        )}
    </>
  );
}

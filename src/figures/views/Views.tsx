/**
 * Three views in third-angle projection, as a working drawing in the United States shows them (common practice): the
 * left side, what is seen from above over it, and the front at its left. Lines and dimensions follow the conventions of
 * ISO 128 and ISO 129: what is seen in thick lines, what is hidden dashed, dimensions in thin lines.
 */
import type { Design } from '../../box/design/design.ts';
import type { View } from '../../geometry/view.ts';
import { described, hasHole, spokenSize } from '../box/from-design.ts';
import { Measured, widthOf } from '../box/Measured.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { HoleLabel } from './HoleLabel.tsx';
import { OneView } from './OneView.tsx';

const sheet = 350;
const text = 13;
const [left, gap, right] = [26, 44, 8];

const views = {
  front: { right: [0, -1, 0], up: [0, 0, 1], into: [1, 0, 0] },
  side: { right: [1, 0, 0], up: [0, 0, 1], into: [0, 1, 0] },
  above: { right: [1, 0, 0], up: [0, 1, 0], into: [0, 0, -1] },
} as const satisfies Record<string, View>;

export function Views({ design }: { design: Design }) {
  const {
    outsideLength: L,
    outsideWidth: W,
    outsideHeight: H,
    insideLength,
    insideWidth,
    wall,
    frontHole,
  } = design.values;
  if (!design.plan) return null;
  const scale = (sheet - left - gap - right) / (L + W);
  const { rim, frontTop } = design.plan;
  const sideX = left + W * scale + gap;
  const planFoot = W * scale + 4;
  const foot = planFoot + 26 + H * scale;
  const front = { scale, x: left + W * scale, y: foot };
  const side = { scale, x: sideX, y: foot };
  const above = { scale, x: sideX, y: planFoot };
  /** The line between box and lid, or the lower front. */
  const lower = design.values.kind === 'sliding' ? frontTop : rim;
  const roomy = insideWidth * scale > 70;
  /** A number with no room goes on below the other view's lines, and moves what lies under it down. */
  const lowered = (size: number) => (size * scale < widthOf(size, text) + 16 ? 20 : 0);
  const drop = Math.max(lowered(W), lowered(L));
  /** In a short view its name stands above the wall's measure, and the inside's number beside its upper end. */
  const isShort = L * scale < 110;
  const raise = isShort ? 16 : 0;
  const inner = planFoot - (isShort ? W - wall : wall) * scale;
  /** The hole's words end with the sheet. */
  const hole = Math.min(sideX + wall * scale + 16, sheet - widthOf(frontHole, text, 'hole '));
  const top = Math.min(-26 - raise, foot - H * scale - 84);
  return (
    <Drawing
      view={[0, top, sheet, foot + 68 + drop - top]}
      title="Three views: front, left side and from above"
      description={`${described(design)} Inside ${spokenSize(insideLength)} by ${spokenSize(insideWidth)}, walls ${spokenSize(wall)}. Third-angle projection.`}
    >
      <OneView design={design} view={views.front} into="x" placing={front} />
      <OneView design={design} view={views.side} into="y" placing={side} />
      <OneView design={design} view={views.above} into="z" placing={above} />
      <Measured from={[left, foot]} to={[left, foot - H * scale]} away={-12} value={H} text={text} />
      <Measured
        from={[left + W * scale, foot]}
        to={[left + W * scale, foot - lower * scale]}
        away={20}
        value={lower}
        text={text}
      />
      <Measured
        from={[left, foot]}
        to={[left + W * scale, foot]}
        away={24 + lowered(W)}
        value={W}
        text={text}
      />
      <Measured
        from={[sideX, foot]}
        to={[sideX + L * scale, foot]}
        away={24 + lowered(L)}
        value={L}
        text={text}
        outside="from"
      />
      {roomy && (
        <>
          <Measured
            from={[sideX + wall * scale, inner]}
            to={[sideX + (L - wall) * scale, inner]}
            away={isShort ? 16 : -12}
            value={insideLength}
            text={text}
            outside="from"
          />
          <Measured
            from={[sideX + (L - wall) * scale, planFoot - wall * scale]}
            to={[sideX + (L - wall) * scale, planFoot - (W - wall) * scale]}
            away={-12}
            value={insideWidth}
            text={text}
          />
        </>
      )}
      <Measured
        from={[sideX, planFoot - W * scale]}
        to={[sideX + wall * scale, planFoot - W * scale]}
        away={-10}
        value={wall}
        text={text}
        outside="from"
        before="wall "
      />
      {hasHole(design.values) && (
        <HoleLabel
          value={frontHole}
          at={[hole, planFoot + 13]}
          from={isShort ? [8, 8] : [-3, 2]}
          hole={[sideX + (wall * scale) / 2, foot - (frontTop + frontHole / 2) * scale]}
        />
      )}
      <Label x={left + (W * scale) / 2} y={foot + 38 + drop}>
        front
      </Label>
      <Label x={sideX + (L * scale) / 2} y={foot + 38 + drop}>
        left side
      </Label>
      <Label x={sideX + L * scale} y={planFoot - W * scale - 12 - raise} anchor="end">
        from above
      </Label>
      <Label x={0} y={foot + 58 + drop} anchor="start">
        Third-angle: each view lies where it is seen from.
      </Label>
    </Drawing>
  );
}

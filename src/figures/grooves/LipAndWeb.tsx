/**
 * One wall cut across: lid groove above, bottom groove below, the middle left out. The wood is in true proportion.
 * Beside each lip stand two arrows, to one scale of force: the push it takes, and the push the reader expects.
 */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { PushArrows } from './PushArrows.tsx';

const width = 350;
const [left, edge] = [104, 24];
/** Height of the drawn inside. */
const middle = 150;

const newtons = (value: number) => said(value, 'force', { digits: 0 });

/** A zigzag where the wall's middle is left out, `across` from the point reached. */
const zigzag = (across: number) =>
  `l${across * 0.35} 0 l${across * 0.1} -7 l${across * 0.1} 14 l${across * 0.1} -7 l${across * 0.35} 0`;

export function LipAndWeb({ values: v }: { values: Values }) {
  const stack = v.lidLip + v.lidThickness + v.bottomTongue + v.bottomLip;
  const scale = Math.min(12, 84 / v.wall, 260 / stack);
  const right = left + v.wall * scale;
  const lid = [edge + v.lidLip * scale, edge + (v.lidLip + v.lidThickness) * scale] as const;
  const bottom = [lid[1] + middle, lid[1] + middle + v.bottomTongue * scale] as const;
  const foot = bottom[1] + v.bottomLip * scale;
  const lidRoot = Math.max(left, right - v.lidGrooveDepth * scale);
  const bottomRoot = Math.max(left, right - v.grooveDepth * scale);
  const cut = lid[1] + middle / 2;
  const body = Math.max(0, v.bottomThickness - v.bottomTongue) * scale;
  const under = Math.max(foot, bottom[1] + body);

  const most = Math.max(v.push, Math.min(2.5 * v.push, Math.max(v.lidLipPush || 0, v.bottomLipPush || 0)));
  return (
    <Drawing
      view={[0, 0, width, under + edge]}
      title="A wall cut across, with both grooves"
      description={`The lip above the lid takes a push of ${newtons(v.lidLipPush)}, the lip below the bottom ${newtons(v.bottomLipPush)}; you expect ${newtons(v.push)}.`}
    >
      <path
        class="end"
        d={`M${left} ${edge} H${right} V${lid[0]} H${lidRoot} V${lid[1]} H${right} V${cut - 6} ${zigzag(left - right)} Z`}
      />
      <path
        class="end"
        d={`M${left} ${cut + 10} ${zigzag(right - left)} V${bottom[0]} H${bottomRoot} V${bottom[1]} H${right} V${foot} H${left} Z`}
      />
      <rect class="wood" x={lidRoot + 3} y={lid[0]} width={width - lidRoot - 4} height={lid[1] - lid[0]} />
      <path
        class="wood"
        d={`M${bottomRoot + 3} ${bottom[0]} H${width - 1} V${bottom[1] + body} H${right + 4} V${bottom[1]} H${bottomRoot + 3} Z`}
      />
      <Lip
        value={v.lidLip}
        web={v.wall - v.lidGrooveDepth}
        outer={edge}
        words={edge - 12}
        inner={lid[0]}
        groove={(lid[0] + lid[1]) / 2}
        root={lidRoot}
        right={right}
        splits={v.lidLipPush < v.push}
      />
      <Lip
        value={v.bottomLip}
        web={v.wall - v.grooveDepth}
        outer={foot}
        words={under + 12}
        inner={bottom[1]}
        groove={(bottom[0] + bottom[1]) / 2}
        root={bottomRoot}
        right={right}
        splits={v.bottomLipPush < v.push}
      />
      <PushArrows x={right} at={lid[1]} up takes={v.lidLipPush} push={v.push} most={most} />
      <PushArrows x={right} at={bottom[0]} takes={v.bottomLipPush} push={v.push} most={most} />
    </Drawing>
  );
}

interface LipProps {
  /** Thickness of lip and web, mm. */
  value: number;
  web: number;
  /** Heights of the wall's edge, of the groove's side and of its middle; `root` is the groove's end, `right` the inside face. */
  outer: number;
  /** Where words about the lip have room. */
  words: number;
  inner: number;
  groove: number;
  root: number;
  right: number;
  splits: boolean;
}

/** Sizes of a lip and its web; the crack along the grain where the push is too much. */
function Lip({ value, web, outer, words, inner, groove, root, right, splits }: LipProps) {
  const away = Math.sign(outer - inner);
  /** Labels keep a line apart however thin the lip is. */
  const label = away * Math.max(away * ((outer + inner) / 2 - groove), 17) + groove;
  const third = (outer - inner) / 3;
  return (
    <>
      {splits && (
        <>
          <rect
            fill="url(#jam)"
            x={root}
            y={Math.min(outer, inner)}
            width={right - root}
            height={Math.abs(outer - inner)}
          />
          <path class="force" d={`M${root} ${inner} l3 ${third} l-5 ${third} l3 ${third}`} />
          <Label x={right + 8} y={words} anchor="start">
            splits at your push
          </Label>
        </>
      )}
      {web > 0 && (
        <path
          class="axis"
          d={`M${left} ${groove} H${root}`}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
      )}
      <g class="dimension">
        <line
          x1={left - 8}
          y1={outer}
          x2={left - 8}
          y2={inner}
          marker-start="url(#arrow)"
          marker-end="url(#arrow)"
        />
        <NumberLabel x={left - 15} y={label} anchor="end" value={value} kind="length" before="lip " />
        {web > 0 ? (
          <NumberLabel x={left - 15} y={groove} anchor="end" value={web} kind="length" before="web " />
        ) : (
          <Label x={left - 15} y={groove} anchor="end">
            no web left
          </Label>
        )}
      </g>
    </>
  );
}

/** A flat-sawn strip in its log, bark up, and the three shapes it might dry to. */
import type { Values } from '../../box/whole/index.ts';
import { woodById } from '../../box/wood/woods.ts';
import { type LogPiece, shrinkagesOf } from '../../calc/board/log-map.ts';
import { type LogShape, shapeAfter } from '../../calc/board/log-shape.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { logRadius } from './LogEnd.tsx';

/** The strip, mm from the pith, and its drying, % moisture. */
const strip: LogPiece = { center: [0, 70], width: 120, thickness: 18, turn: 0 };
const drying = { from: 12, to: 6 } as const;
/** How many times too large a bend is drawn. */
const times = 20;

/** The shape of the strip once it is dry; nothing where the wood's figures are not known. */
function dried(v: Values): LogShape | undefined {
  const wood = woodById(v.species);
  const shrinkages = wood && shrinkagesOf(wood, drying.from, drying.to);
  if (!shrinkages || isRefused(shrinkages)) return undefined;
  const shape = shapeAfter(strip, shrinkages, 24);
  return isRefused(shape) ? undefined : shape;
}

/** How deep its bark side goes hollow, mm; below zero it is crowned. */
export const barkHollow = (v: Values): number => {
  const shape = dried(v);
  return shape ? shape[shape.bark].cup : Number.NaN;
};

/** Which of the drawn shapes it takes. */
export function cupOption(v: Values): string {
  const hollow = barkHollow(v);
  return hollow > 0.01 ? 'hollow' : hollow < -0.01 ? 'crowned' : 'flat';
}

const rings = Array.from({ length: 16 }, (_, i) => 10 * (i + 1));

export function StripInLog() {
  const half = strip.width / 2;
  const top = -strip.center[1] - strip.thickness / 2;
  return (
    <Drawing
      view={[-175, -logRadius - 16, 350, logRadius + 34]}
      title="A strip in the end of its log"
      description="The strip lies above the pith, its rings along its wide face, its bark side up."
    >
      <clipPath id="log-top">
        <rect x={-175} y={-logRadius - 16} width={350} height={logRadius + 20} />
      </clipPath>
      <g clip-path="url(#log-top)">
        <circle class="bark" r={logRadius} />
        <path class="ring faint" d={rings.map((r) => `M${r} 0A${r} ${r} 0 0 0 ${-r} 0`).join('')} />
      </g>
      <circle class="mark" r="3" />
      <Label x={10} y={10} anchor="start">
        pith
      </Label>
      <rect class="board" x={-half} y={top} width={strip.width} height={strip.thickness} />
      <Label class="on-lines" x={0} y={top + strip.thickness / 2}>
        strip
      </Label>
      <Label class="on-lines" x={0} y={-logRadius + 14}>
        bark
      </Label>
    </Drawing>
  );
}

/** A strip bent at its middle by `deep` units, level at its ends. */
const bent = (deep: number) => `M10 36Q75 ${36 + 2 * deep} 140 36v18Q75 ${54 + 2 * deep} 10 54z`;
const drawn = { hollow: 14, flat: 0, crowned: -14 } as const;

export function CupPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const right = open && option === cupOption(v);
  const deep = right ? (barkHollow(v) * times * 130) / strip.width : drawn[option as keyof typeof drawn];
  return (
    <Drawing
      view={[0, 0, 150, 92]}
      title="A strip, bark side up"
      description={
        right
          ? `Its bark side is hollow by ${said(barkHollow(v), 'length', { as: 'fine' })}, drawn ${times} times too deep.`
          : { hollow: 'Its bark side is hollow.', flat: 'It is flat.', crowned: 'Its bark side is crowned.' }[
              option
            ]!
      }
    >
      <path class={right ? 'wood-end' : 'ghost'} d={bent(deep)} />
    </Drawing>
  );
}

/** Two leaves as they leave the saw, and three shapes they might have once both faces of each are equally dry. */
import type { Values } from '../../box/whole/index.ts';
import { cupFromFaces } from '../../calc/board/cup.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Points of moisture by which the fresh face is damper. Ours. */
export const damper = 2;
/** How many times too large a bend is drawn. */
const times = 5;

const leafOf = (v: Values) => v.wall + 2 * v.planing;

/** How deep the fresh face goes hollow once it has lost its surplus, mm; below zero it is crowned. */
export const freshHollow = (v: Values): number =>
  cupFromFaces.compute({ C: v.tangentialCoefficient, dM: damper, w: v.boardWidth, T: leafOf(v) });

/** Which of the drawn shapes they take. */
export function freshOption(v: Values): string {
  const hollow = freshHollow(v);
  return hollow > 0.01 ? 'lens' : hollow < -0.01 ? 'waist' : 'flat';
}

export function FreshLeaves({ values: v }: { values: Values }) {
  const scale = 250 / v.boardWidth;
  const [left, top] = [14, 40];
  const t = leafOf(v) * scale;
  const gap = v.kerf * scale;
  return (
    <Drawing
      view={[0, 0, 350, top + 2 * t + gap + 40]}
      title="Two leaves as they leave the saw, seen from their ends"
      description={`Both are flat. Their fresh faces, which look at each other, are ${damper} points damper than the outer faces.`}
    >
      <rect class="wood-end" x={left} y={top} width={250} height={t} />
      <rect class="wood-end" x={left} y={top + t + gap} width={250} height={t} />
      <rect class="water" x={left} y={top + t * 0.62} width={250} height={t * 0.38} />
      <rect class="water" x={left} y={top + t + gap} width={250} height={t * 0.38} />
      <Label x={left} y={top - 14} anchor="start">
        outer face
      </Label>
      <Label x={left + 258} y={top + t + gap / 2} anchor="start">
        fresh, damp
      </Label>
      <NumberLabel
        x={left}
        y={top + 2 * t + gap + 18}
        anchor="start"
        value={v.boardWidth}
        kind="length"
        before="outer face; leaves "
        after=" wide"
      />
    </Drawing>
  );
}

const drawn = { lens: 7, flat: 0, waist: -7 } as const;
/** A leaf whose middle lies `deep` lower than its ends, from its upper line down. */
const bent = (y: number, deep: number, thick: number) =>
  `M10 ${y}Q75 ${y + 2 * deep} 140 ${y}v${thick}Q75 ${y + thick + 2 * deep} 10 ${y + thick}z`;

export function FreshPick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const right = open && option === freshOption(v);
  const scale = 130 / v.boardWidth;
  const deep = right ? freshHollow(v) * times * scale : drawn[option as keyof typeof drawn];
  const thick = Math.max(8, leafOf(v) * scale);
  const name = right ? 'wood-end' : 'ghost';
  // The leaves lie on each other where they are highest: at their ends, or in the middle.
  const apart = 4 + Math.max(0, -2 * deep);
  const middle = 46;
  return (
    <Drawing
      view={[0, 0, 150, 92]}
      title="Two leaves, fresh faces toward each other"
      description={
        right
          ? `The fresh faces are hollow by ${said(freshHollow(v), 'length', { as: 'fine' })}, drawn ${times} times too deep.`
          : {
              lens: 'The fresh faces are hollow.',
              flat: 'Both leaves are flat.',
              waist: 'The outer faces are hollow.',
            }[option]!
      }
    >
      <path class={name} d={bent(middle - apart / 2 - thick, -deep, thick)} />
      <path class={name} d={bent(middle + apart / 2, deep, thick)} />
    </Drawing>
  );
}

/** The end of a wall for each of three corners without fingers: which has the largest face for glue? */
import type { Values } from '../../box/whole/index.ts';
import { buttGlueArea, miterGlueArea, rabbetGlueArea } from '../../calc/joints/glue-area.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';
import { sizeOfEnd, WallEnd } from './WallEnd.tsx';

const joints = { butt: 'butt', rabbet: 'rabbet', miter: 'mitre' } as const;
type Option = keyof typeof joints;
const isOption = (option: string): option is Option => option in joints;

/** Area of the faces that meet, mm²; a rabbet takes half of the wall. */
export function faceOf({ jointedHeight: H, wall: t }: Values, option: string): number {
  if (option === 'rabbet') return rabbetGlueArea.compute({ H, t, r: t / 2 });
  return (option === 'miter' ? miterGlueArea : buttGlueArea).compute({ H, t });
}

/** The option with the largest face. */
export const largestFace = (v: Values): string =>
  Object.keys(joints).reduce((most, one) => (faceOf(v, one) > faceOf(v, most) ? one : most));

const [width, height, air] = [120, 132, 6] as const;

export function FacePick({ values: v, option, open }: { values: Values; option: string; open: boolean }) {
  const [wide, high] = sizeOfEnd(v.wall, v.jointedHeight);
  const scale = Math.min((height - 2 * air) / high, (width - 2 * air) / wide);
  return (
    <Drawing
      view={[0, 0, width, height]}
      title="The end of a wall where it meets the next"
      description={
        open ? `Its faces meet on ${said(faceOf(v, option), 'area')}.` : 'Its area is not told yet.'
      }
    >
      <WallEnd
        values={{ ...v, joint: isOption(option) ? joints[option] : 'butt' }}
        x={(width - wide * scale) / 2}
        foot={height - air}
        scale={scale}
        told={open}
      />
    </Drawing>
  );
}

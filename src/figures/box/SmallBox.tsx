/** The closed box from above and in front of it, in true proportion, as small as the drawings beside titles. */
import type { Design } from '../../box/design/design.ts';
import { visible } from '../../geometry/visible.ts';
import { SmallDrawing, smallSheet } from '../parts/SmallDrawing.tsx';
import { isometric, shownParts } from './from-design.ts';
import { fitted } from './paths.ts';
import { SolidPicture } from './SolidPicture.tsx';

export function SmallBox({ design }: { design: Design }) {
  const seen = visible(isometric, shownParts(design));
  const placing = fitted(seen, [0, 0], smallSheet);
  return (
    <SmallDrawing view={[0, 0, smallSheet[0], placing.height]}>
      <SolidPicture seen={seen} placing={placing} />
    </SmallDrawing>
  );
}

/** The box without its lid, from above and in front of it: the room for what goes in. */
import { designOf } from '../../box/design/design.ts';
import { visible } from '../../geometry/visible.ts';
import { SmallDrawing, type SmallFigure, smallSheet } from '../parts/SmallDrawing.tsx';
import { isometric } from './from-design.ts';
import { fitted } from './paths.ts';
import { posed } from './poses.ts';
import { SolidPicture } from './SolidPicture.tsx';

const StageContents: SmallFigure = ({ values }) => {
  const seen = visible(isometric, posed(designOf(values), 'lid off'));
  const placing = fitted(seen, [0, 0], smallSheet);
  return (
    <SmallDrawing view={[0, 0, smallSheet[0], placing.height]}>
      <SolidPicture seen={seen} placing={placing} />
    </SmallDrawing>
  );
};

export default StageContents;

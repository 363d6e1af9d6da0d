/** The lid closed and open: the open box as it stands, and a section through both states along the way the lid goes. */
import type { Design } from '../../box/design/design.ts';
import { sectionOf } from '../../geometry/faces.ts';
import { onSheet, type View } from '../../geometry/view.ts';
import { visible } from '../../geometry/visible.ts';
import { described, isometric, shownParts } from '../box/from-design.ts';
import { type Opening, openingOf } from '../box/opening.ts';
import { extent, fitted } from '../box/paths.ts';
import { type Cut, SectionPicture } from '../box/SectionPicture.tsx';
import { SolidPicture } from '../box/SolidPicture.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';

const sheet = 350;
const views = {
  y: { right: [1, 0, 0], up: [0, 0, 1], into: [0, 1, 0] },
  x: { right: [0, 1, 0], up: [0, 0, 1], into: [-1, 0, 0] },
} as const satisfies Record<string, View>;

/** All parts cut through the middle, on the sheet; what opens moved where `opening` says how. */
function cutThrough(design: Design, { across }: Opening, move?: Opening['move']): Cut[] {
  const middle = (across === 'y' ? design.values.outsideWidth : design.values.outsideLength) / 2;
  const view = views[across];
  return design.parts.flatMap((part) =>
    part.pieces.map((piece) => ({
      name: part,
      normal: view.into,
      polygons: sectionOf(piece, across, middle).map(({ points, drawn }) => ({
        points: points.map((point) => onSheet(view, piece.opens && move ? move(point) : point)),
        drawn,
      })),
    })),
  );
}

export function LidOpenClosed({ design }: { design: Design }) {
  const opening = openingOf(design);
  if (!opening) return null;
  const open = visible(
    isometric,
    shownParts(design, (_, opens) => (opens ? opening.move : undefined)),
  );
  const picture = fitted(open, [6, 24], [sheet - 12, 260]);
  const states = [cutThrough(design, opening), cutThrough(design, opening, opening.move)] as const;
  const foot = 24 + picture.height + 46;
  const half = (sheet - 10) / 2;
  // Both sections at one scale, so that they can be compared.
  const { scale, height } = fitted(states[1], [0, 0], [half, 150]);
  const places = states.map((cuts, index) => {
    const [x1, , , y2] = extent(cuts);
    const left = index * (half + 10);
    return { cuts, left, placing: { scale, x: left - scale * x1, y: foot + height - scale * y2 } };
  });
  return (
    <Drawing
      view={[0, 0, sheet, foot + height + 6]}
      title="The lid, closed and open"
      description={`${opening.words} ${described(design)}`}
    >
      <Label x={0} y={9} anchor="start">
        {opening.words.split(';')[0]!.replace(/\.$/, '')}
      </Label>
      <SolidPicture seen={open} placing={picture} />
      {places.map(({ cuts, left, placing }, index) => (
        <g key={left}>
          <Label x={left} y={foot - 14} anchor="start">
            {index === 0 ? 'cut through, closed' : 'and open'}
          </Label>
          <SectionPicture cuts={cuts} placing={placing} />
        </g>
      ))}
    </Drawing>
  );
}

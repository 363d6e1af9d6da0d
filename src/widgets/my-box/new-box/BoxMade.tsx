/** The box that the answers make: drawn, with what was chosen for the reader and how it stands with the rules. */
import { useMemo } from 'preact/hooks';
import { designBox } from '../../../box/design/design.ts';
import type { Box } from '../../../box/subjects/inputs.ts';
import { verdicts } from '../../../box/whole/index.ts';
import { BenchBox } from '../../../figures/box/BenchBox.tsx';
import { benchPicture } from '../../../figures/box/bench-picture.ts';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { Sizes } from '../../../figures/parts/Sizes.tsx';
import { Mark } from '../../verdicts/Mark.tsx';
import { countOf, judgedOf } from '../warnings.ts';

const Size = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="size" />;
const Gap = ({ of }: { of: number }) => <Quantity value={of} kind="length" as="exact" />;

/** The box, open, as small as a tile or as large as its place. */
export function OpenBox({ box }: { box: Box }) {
  const drawn = useMemo(() => {
    const design = designBox(box);
    return { design, picture: benchPicture(design, 'open', 0, 0) };
  }, [box]);
  return <BenchBox {...drawn} chosen={undefined} />;
}

export function BoxMade({ box }: { box: Box }) {
  const { design, judged } = useMemo(() => {
    const made = designBox(box);
    return { design: made, judged: judgedOf(verdicts(made.values), made.refusals, box.accepted) };
  }, [box]);
  const { values: v } = design;
  const { looks } = countOf(judged.warnings);
  return (
    <>
      <OpenBox box={box} />
      <p>
        <b>
          <Sizes of={[v.outsideLength, v.outsideWidth, v.outsideHeight]} /> outside.
        </b>{' '}
        <Mark of="kept" /> It can be built. {judged.kept.length} rules kept
        {looks > 0 && (
          <>
            , <Mark of="look" /> {looks} to look at
          </>
        )}
        .
      </p>
      <p class="chosen-for-you">
        Chosen for you: walls <Size of={box.wall} />, fingers of <Size of={box.fingerWidth} />, a lid of{' '}
        <Size of={box.lidThickness} /> {box.lid === 'plywood' ? 'plywood' : 'solid wood'}
        {box.kind === 'sliding' && (
          <>
            {' '}
            with <Gap of={box.lidPlay} /> of play
          </>
        )}
        , a bottom of <Size of={box.bottomThickness} />{' '}
        {box.bottom === 'plywood' ? (
          'plywood'
        ) : (
          <>
            solid wood with <Gap of={box.bottomGap} /> free at each side
          </>
        )}
        . All lies on your ruler; each answers “why?” on the bench.
      </p>
    </>
  );
}

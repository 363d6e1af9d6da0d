/**
 * A face cut across its scratches: as coarse paper left it, and what fine paper may leave of that. Scratches are spaced as
 * the grit numbers stand to each other; their depth is a sketch, since no source for it could be named.
 */
import { gritStep, WIDEST_STEP, widestStep } from '../../calc/finish/grits.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';

/** The two papers. */
export const papers = { coarse: 80, fine: 220 } as const;

/** Space between two scratches of the fine paper, drawing units, and how deep the sketch draws both. */
const [apart, fineDepth, coarseDepth] = [7, 4, 17] as const;
const coarseApart = apart * gritStep.compute({ G_1: papers.coarse, G_2: papers.fine });

/** What is left by the fine paper after the coarse one: `deep` where the step is wider than the rule allows. */
export const scratchesLeft = (): string =>
  widestStep([papers.coarse, papers.fine]) > WIDEST_STEP ? 'deep' : 'fine';

/** The surface from left to right: how deep the scratches are at a place. */
function profile(width: number, top: number, depthAt: (x: number) => number): string {
  const points = Array.from({ length: Math.floor(width / 1.75) + 1 }, (_, i) => i * 1.75);
  return points.map((x) => `${(10 + x).toFixed(1)} ${(top + depthAt(x)).toFixed(1)}`).join('L');
}

/** A row of notches, each so deep, so far apart. */
const notches = (spacing: number, depth: number, share: number) => (x: number) => {
  const away = Math.abs((x % spacing) - spacing / 2) / (spacing / 2);
  return depth * Math.max(0, 1 - away / share);
};
const fine = notches(apart, fineDepth, 1);
const coarse = notches(coarseApart, coarseDepth, 0.8);

const shapes: Readonly<Record<string, (x: number) => number>> = {
  smooth: () => coarseDepth,
  fine: (x) => coarseDepth + fine(x) - fineDepth,
  // The peaks are gone, so the floor of each deep scratch stays where it was.
  deep: (x) => Math.max(coarse(x), fineDepth + fine(x)),
};
const says: Readonly<Record<string, string>> = {
  smooth: 'The face is smooth.',
  fine: 'Only fine scratches are left.',
  deep: 'Fine scratches cover the face, and the floors of the coarse ones are left.',
};

export const CoarseFace = () => (
  <Drawing
    view={[0, 0, 350, 116]}
    title={`A face sanded with ${papers.coarse} grit, cut across its scratches`}
    description="A row of deep scratches, equally far apart; how deep they are is a sketch."
  >
    <path class="wood-end" d={`M${profile(330, 22, coarse)}V84H10Z`} />
    <Label x={175} y={102}>
      as {papers.coarse} grit left it, much enlarged
    </Label>
  </Drawing>
);

export function ScratchPick({ option, open }: { option: string; open: boolean }) {
  const right = open && option === scratchesLeft();
  return (
    <Drawing
      view={[0, 0, 150, 86]}
      title={`The same face after ${papers.fine} grit`}
      description={says[option]!}
    >
      <path class={right ? 'wood-end arrives' : 'ghost'} d={`M${profile(130, 20, shapes[option]!)}V72H10Z`} />
    </Drawing>
  );
}

/** Boards that lie on each other, end grain towards the reader, in true proportion: moisture passes only the faces that air can reach. */
import { Drawing, textSize } from '../parts/Drawing.tsx';
import { Label } from '../parts/Label.tsx';

export interface BoardStackProps {
  /** Of one board, mm. */
  readonly thickness: number;
  /** Boards that lie on each other without a gap. */
  readonly tight: number;
}

/** Width of the boards and thickness of the sticks between them, mm. */
const [width, stick] = [120, 12] as const;

export function BoardStack({ thickness, tight }: BoardStackProps) {
  const sheet = 260;
  const text = textSize(sheet);
  const packs = tight === 1 ? 2 : 1;
  const pack = tight * thickness;
  const height = packs * pack + (packs + 1) * stick;
  const tops = Array.from({ length: packs }, (_, i) => stick + i * (pack + stick));
  const boards = tops.flatMap((top) => Array.from({ length: tight }, (_, i) => top + i * thickness));
  const faces = tops.flatMap(
    (top) =>
      [
        [top, 1],
        [top + pack, -1],
      ] as const,
  );
  const x = width / 2;
  return (
    <Drawing
      view={[0, -2, sheet, Math.max(height, 3 * text) + 4]}
      title="How the boards lie"
      description={
        tight === 1
          ? 'Boards on sticks: air reaches both faces of each.'
          : `${tight} boards without a gap: air reaches only the two outer faces, as if they were one thick board.`
      }
    >
      {[0, ...tops.map((top) => top + pack)].flatMap((y) =>
        [4, width - 16].map((at) => (
          <rect key={`${y} ${at}`} class="inside" x={at} y={y} width={stick} height={stick} />
        )),
      )}
      {boards.map((y) => (
        <rect key={y} class="end" x={0} y={y} width={width} height={thickness} />
      ))}
      {faces.map(([y, way]) => (
        <line
          key={y}
          class="force"
          x1={x}
          x2={x}
          y1={y - way * stick * 0.8}
          y2={y + way * Math.min(pack * 0.35, 8)}
          marker-end="url(#arrow)"
        />
      ))}
      <Label x={width + 10} y={height / 2 - text * 0.7} anchor="start">
        {tight === 1 ? 'air at each face' : `air at 2 of ${2 * tight} faces`}
      </Label>
      <Label x={width + 10} y={height / 2 + text * 0.7} anchor="start">
        {tight === 1 ? 'of each board' : 'acts as one board'}
      </Label>
    </Drawing>
  );
}

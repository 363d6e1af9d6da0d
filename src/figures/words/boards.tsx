/** Words of boards: how the rings lie in an end, how a board bends, and a hinge; in proportion to the box's lid and board. */
import { SmallDrawing, smallSheet } from '../parts/SmallDrawing.tsx';
import { drawnFor, Meant } from './meant.tsx';

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** The end of a board with its rings at an angle to the wide face, degrees. */
const angles = { 'flat-sawn': 0, 'rift-sawn': 45, 'quarter-sawn': 90 } as const;
export const ringWords = drawnFor(['flat-sawn', 'rift-sawn', 'quarter-sawn'], (name, v) => {
  const thick = v.boardThickness;
  const wide = thick * 3.4;
  const lean = radians(angles[name]);
  const along = [Math.cos(lean) * 2 * wide, Math.sin(lean) * 2 * wide] as const;
  const lines = Array.from({ length: 81 }, (_, i) => ((i - 40) * thick) / 5.5)
    .map((off) => {
      const [x, y] = [wide / 2 - Math.sin(lean) * off, thick / 2 - Math.cos(lean) * off];
      return `M${x - along[0]} ${y + along[1]}L${x + along[0]} ${y - along[1]}`;
    })
    .join('');
  // What stands over its sheet is cut off: the board lies in a sheet of its own size.
  return (
    <SmallDrawing view={[0, -thick * 0.7, wide, thick * 2.4]}>
      <svg x="0" y="0" width={wide} height={thick} viewBox={`0 0 ${wide} ${thick}`} aria-hidden="true">
        <rect class="wood-end" width={wide} height={thick} />
        <path class="ring" d={lines} />
      </svg>
      <rect class="meant open" width={wide} height={thick} />
    </SmallDrawing>
  );
});

/** Bent boards, the bend drawn as large as the sheet allows: no measure of any board. */
export const bentWords = drawnFor(['cups', 'crowned', 'hollow', 'bow', 'crook', 'rocks'], (name) => {
  const [width, height] = smallSheet as [number, number];
  const edge = (y: number, bend: number) => `M4 ${y}Q${width / 2} ${y + 2 * bend} ${width - 4} ${y}`;
  const slab = (y: number, thick: number, bend: number) =>
    `${edge(y, bend)}v${thick}Q${width / 2} ${y + thick + 2 * bend} 4 ${y + thick}Z`;
  if (name === 'rocks') {
    const [left, right] = [8, width - 8];
    return (
      <SmallDrawing view={[0, 0, width, height]}>
        <path
          class="wood"
          d={`M${left} ${height * 0.5}L${right - 26} ${height * 0.2}L${right} ${height * 0.62}L${left + 30} ${height * 0.78}Z`}
        />
        <path
          class="hidden-line"
          d={`M${left} ${height * 0.62}L${right - 26} ${height * 0.34}L${right} ${height * 0.62}L${left + 30} ${height * 0.9}Z`}
        />
      </SmallDrawing>
    );
  }
  const bend = name === 'crowned' ? -height * 0.14 : height * 0.14;
  const start = name === 'crowned' ? height * 0.55 : height * 0.3;
  // Cup is seen on the end of the board, bow on its edge, crook on its face.
  const ends = name === 'cups' || name === 'crowned' || name === 'hollow';
  const thick = name === 'crook' ? height * 0.34 : ends ? height * 0.17 : height * 0.09;
  return (
    <SmallDrawing view={[0, 0, width, height]}>
      <path class={ends ? 'wood-end' : 'wood'} d={slab(start, thick, bend)} />
      <path class="hidden-line" d={`M4 ${start}H${width - 4}`} />
      <path class="meant open" d={edge(start, bend)} />
    </SmallDrawing>
  );
});

/** A hinge, opened flat: its leaves, the pin, and the knuckle around it; as long as the box has hinges. */
export const hingeWords = drawnFor(['knuckle', 'leaf'], (name, v) => {
  const long = v.hingeLength;
  const [leaf, round] = [long * 0.42, long * 0.14];
  const [first, second] = [long * 0.32, long * 0.68];
  const right = leaf + round;
  return (
    <SmallDrawing view={[0, 0, 2 * leaf + round, long]}>
      <rect class="inside" width={leaf} height={long} />
      <rect class="inside" x={right} width={leaf} height={long} />
      <path
        class="thin"
        d={[leaf / 2, right + leaf / 2]
          .flatMap((x) => [0.2, 0.5, 0.8].map((y) => `M${x - 1} ${y * long}a1 1 0 1 0 2 0a1 1 0 1 0 -2 0`))
          .join('')}
      />
      <path class="wood" d={`M${leaf} 0H${right}V${long}H${leaf}Z`} />
      <path class="thin" d={`M${leaf} ${first}H${right}M${leaf} ${second}H${right}`} />
      <Meant
        d={name === 'leaf' ? `M0 0H${leaf}V${long}H0Z` : `M${leaf} ${first}H${right}V${second}H${leaf}Z`}
      />
    </SmallDrawing>
  );
});

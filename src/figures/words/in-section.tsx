/** Words of grooves and edges: a wall of the box and its bottom, cut through, enlarged; mm in true proportion. */
import { SmallDrawing } from '../parts/SmallDrawing.tsx';
import { drawnFor, Meant } from './meant.tsx';

const rect = (x: number, y: number, width: number, height: number) =>
  `M${x} ${y}h${width}v${height}h${-width}Z`;

/** The lower end of a wall with its groove, and the edge of the bottom in it. */
export const wallWords = drawnFor(['groove', 'lip', 'web', 'tongue', 'gap', 'slip'], (name, v) => {
  const { wall, grooveDepth: deep, bottomGap: gap, bottomLip: lip, bottomTongue: tongue } = v;
  const above = 1.6 * lip;
  const height = above + tongue + lip;
  const width = 1.4 * height;
  const foot = above + tongue;
  const loose = name === 'slip' ? tongue / 5 : 0;
  const groove = rect(wall - deep, above, deep, tongue);
  const areas = {
    groove,
    lip: rect(0, foot, wall, lip),
    web: rect(0, above, wall - deep, tongue),
    tongue: rect(wall - deep + gap, above, deep - gap, tongue),
    gap: rect(wall - deep, above, gap, tongue),
    // Enlarged as it is nowhere else: true to scale it would be a line.
    slip: rect(wall - deep + gap, above, deep - gap, loose),
  };
  const withPanel = name === 'tongue' || name === 'gap' || name === 'slip';
  return (
    <SmallDrawing view={[0, 0, width, height]}>
      <path class="wood-end" d={`M0 -1H${wall}V${above}H${wall - deep}V${foot}H${wall}V${height}H0Z`} />
      {withPanel && (
        <path
          class="wood"
          d={`M${wall - deep + gap} ${above + loose}H${2 * width}V${above + v.bottomThickness}H${wall}V${foot}H${wall - deep + gap}Z`}
        />
      )}
      <Meant d={areas[name]} />
    </SmallDrawing>
  );
});

/** The end of a wall, the edge that is meant cut off; the depth is that of the groove. */
export const edgeWords = drawnFor(['rabbet', 'chamfer', 'bevel', 'arris'], (name, v) => {
  const { wall, grooveDepth: deep, bottomTongue: high } = v;
  const height = 1.8 * wall;
  const cut = wall / 4;
  const shapes = {
    rabbet: [
      `M0 -1H${wall}V${height - high}H${wall - deep}V${height}H0Z`,
      rect(wall - deep, height - high, deep, high),
    ],
    chamfer: [`M0 ${cut}L${cut} 0H${wall}V${2 * height}H0Z`, `M0 0H${cut}L0 ${cut}Z`],
    bevel: [`M0 ${wall / 2}L${wall} 0V${2 * height}H0Z`, `M0 0H${wall}L0 ${wall / 2}Z`],
    arris: [
      `M0 0H${wall}V${2 * height}H0Z`,
      `M${-cut / 2} 0a${cut / 2} ${cut / 2} 0 1 0 ${cut} 0a${cut / 2} ${cut / 2} 0 1 0 ${-cut} 0Z`,
    ],
  } as const;
  const [shape, meant] = shapes[name];
  return (
    <SmallDrawing view={[-wall * 0.45, -cut / 2, wall * 1.9, height + cut / 2]}>
      <path class="wood-end" d={shape} />
      <Meant d={meant} />
    </SmallDrawing>
  );
});

/** A board seen from its face: what the saw takes, across it or along; a channel across the grain, and one that stops. */
export const faceWords = drawnFor(['kerf', 'crosscut', 'rip', 'dado', 'stopped'], (name, v) => {
  const { kerf, wall, grooveDepth: deep, bottomTongue: tongue } = v;
  const height = 5 * wall;
  const width = 1.5 * height;
  const lines = Array.from({ length: 6 }, (_, i) => `M0 ${((i + 0.5) * height) / 6}H${width}`).join('');
  const areas = {
    kerf: rect(width * 0.6, -1, kerf, height + 2),
    crosscut: rect(width * 0.6, -1, kerf, height + 2),
    rip: rect(-1, height * 0.62, width + 2, kerf),
    dado: rect(width * 0.45, 0, 1.5 * tongue, height),
    stopped: rect(deep + wall, height * 0.6, width, tongue),
  };
  return (
    <SmallDrawing view={[0, 0, width, height]}>
      <rect class="wood" width={width} height={height} />
      <path class="ring" d={lines} />
      <Meant d={areas[name]} />
    </SmallDrawing>
  );
});

/** Words of what is in a box and above it: the example's lid, walls and bottom, cut through; mm in true proportion. */
import { SmallDrawing } from '../parts/SmallDrawing.tsx';
import { drawnFor, Meant } from './meant.tsx';

const rect = (x: number, y: number, width: number, height: number) =>
  `M${x} ${y}h${width}v${height}h${-width}Z`;

/** Cut along its length, the front on the left. Felt would be a hair's breadth here, so the lining is drawn as of thin wood. */
export const insideWords = drawnFor(['lining', 'divider', 'headroom', 'lowered-front'], (name, v) => {
  const { outsideLength: length, outsideHeight: height, wall } = v;
  const under = height - v.bottomLip - v.bottomThickness;
  const over = v.lidLip + v.lidThickness;
  const clear = under - over;
  const thin = wall / 2;
  const low = v.frontLowered;
  const middle = length / 2;
  const high = clear * 0.7;
  const areas = {
    lining: rect(wall, over, thin, clear) + rect(length - wall - thin, over, thin, clear),
    divider: rect(middle - thin / 2, under - high, thin, high),
    headroom: rect(wall, over, length - 2 * wall, clear - high),
    'lowered-front': rect(0, low, wall, height - low),
  };
  return (
    <SmallDrawing view={[0, 0, length, height]}>
      <path class="wood-end" d={rect(0, low, wall, height - low) + rect(length - wall, 0, wall, height)} />
      <path class="wood" d={rect(wall, under, length - 2 * wall, v.bottomThickness)} />
      <path class="wood" d={rect(0, v.lidLip, length - wall, v.lidThickness)} />
      {name === 'headroom' && (
        <path class="inside" d={rect(wall * 1.5, under - high, length - 3 * wall, high)} />
      )}
      {name === 'divider' && (
        <path
          class="inside"
          d={
            rect(wall * 1.5, under - high * 0.8, middle - 2.5 * wall, high * 0.8) +
            rect(middle + wall, under - high * 0.8, middle - 2.5 * wall, high * 0.8)
          }
        />
      )}
      <Meant d={areas[name]} />
    </SmallDrawing>
  );
});

/** The front end of the lid, cut along its length: the steep side of the notch is what the thumb pushes. */
export const lidWords = drawnFor(['thumb-notch'], (_, v) => {
  const { lidThickness: thick, notchDepth: deep } = v;
  const wide = 9 * thick;
  const [steep, end] = [2.5 * thick, 5.5 * thick];
  return (
    <SmallDrawing view={[0, -2.2 * thick, wide, 5.4 * thick]}>
      <path class="wood" d={`M0 0H${steep}V${deep}L${end} 0H${2 * wide}V${thick}H0Z`} />
      <Meant d={`M${steep} 0V${deep}L${end} 0Z`} />
    </SmallDrawing>
  );
});

/** A panel carried at its two ends; the sag is drawn as large as the sheet allows. */
export const panelWords = drawnFor(['sag'], (_, v) => {
  const [width, thick] = [v.outsideWidth, v.bottomThickness];
  const [foot, sag] = [thick * 1.6, width * 0.16];
  const edge = (y: number, from: number, to: number) => `${from} ${y}Q${width / 2} ${y + 2 * sag} ${to} ${y}`;
  return (
    <SmallDrawing view={[0, 0, width, width * 0.6]}>
      <path
        class="wood"
        d={`M${edge(foot, 0, width)}V${foot + thick}Q${width / 2} ${foot + thick + 2 * sag} 0 ${foot + thick}Z`}
      />
      <path
        class="wood-end"
        d={rect(0, foot + thick, thick, width) + rect(width - thick, foot + thick, thick, width)}
      />
      <path class="hidden-line" d={`M0 ${foot}H${width}`} />
      <path class="meant open" d={`M${width / 2} ${foot}V${foot + sag}`} />
    </SmallDrawing>
  );
});

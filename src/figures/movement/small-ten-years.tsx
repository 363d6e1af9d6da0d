/** The play of the lid over ten years, without words: the wave of the seasons between its jamming and the depth of its groove. */
import { panelPractice } from '../../calc/movement/panel.ts';
import { SmallDrawing, type SmallFigure, smallSheet } from '../parts/SmallDrawing.tsx';
import { axesOn, curve, evenly, Zone } from '../plot/Plot.tsx';
import { playIn } from './TenYears.tsx';

const TenYearsSmall: SmallFigure = ({ values: v }) => {
  const [width, height] = smallSheet;
  const groove = v.lidGrooveDepth;
  const on = axesOn({ left: 0, right: width, top: 0, bottom: height }, [0, 10], [-0.25 * groove, groove]);
  const points = evenly([0, 10], 160).map((year) => [year, playIn(v, 'nothing', year)] as const);
  return (
    <SmallDrawing view={[0, 0, width, height]}>
      <Zone on={on} y={[-0.25 * groove, 0]} fill="url(#jam)" />
      <Zone on={on} y={[groove - panelPractice.lidEngagement, groove]} class="held-barely" />
      <path class="axis" d={`M0 ${on.y(0)}H${width}`} />
      <path class="curve" fill="none" d={curve(on, points)} />
    </SmallDrawing>
  );
};

export default TenYearsSmall;

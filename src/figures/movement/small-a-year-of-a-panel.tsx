/** How wide the bottom grows in the year after it was fitted in February, and from where on it jams in its grooves. */
import { moistureOf, setupOf } from '../../box/subjects/movement/panel-year.ts';
import { climates } from '../../calc/air/climates.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import { fromDay } from '../../calc/movement/build-season.ts';
import { panelCourse } from '../../calc/movement/panel-year.ts';
import { SmallDrawing, type SmallFigure, smallSheet } from '../parts/SmallDrawing.tsx';
import { AxisLines } from '../plot/Axis.tsx';
import { axesOn, curve, evenly, Zone } from '../plot/Plot.tsx';

const [width, height] = smallSheet;
const frame = { left: 6, right: width - 4, top: 0, bottom: height - 4 };
/** Day of the year: the middle of February. */
const built = 45;

const AYearOfAPanelSmall: SmallFigure = ({ values: v }) => {
  const moisture = moistureOf(v, 'bottom', climates[0]!.year);
  if (isRefused(moisture)) throw new Error(moisture.refused);
  const setup = setupOf(v, 'bottom');
  const course = panelCourse(setup, fromDay(moisture.middle, built));
  if (isRefused(course)) throw new Error(course.refused);
  const growth = (day: number) => setup.play - course.play[Math.round(day)]!;
  const axes = axesOn(frame, [0, 364], [-0.1 * setup.play, 1.35 * setup.play]);
  return (
    <SmallDrawing view={[0, 0, width, height]}>
      <Zone on={axes} y={[setup.play, 1.35 * setup.play]} fill="url(#jam)" />
      <path class="warn-hatch" d={`M${axes.left} ${axes.y(setup.play)}H${axes.right}`} />
      <path
        class="curve"
        d={curve(
          axes,
          evenly([0, 364], 28).map((day) => [day, growth(day)]),
        )}
      />
      <AxisLines on={axes} />
    </SmallDrawing>
  );
};

export default AYearOfAPanelSmall;

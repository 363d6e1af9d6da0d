/** Moisture of wood against the humidity of its air, and where today's air stands on the curve. */
import { equilibriumMoisture, tabulatedAir } from '../../calc/air/moisture.ts';
import { SmallDrawing, type SmallFigure, smallSheet } from '../parts/SmallDrawing.tsx';
import { AxisLines } from '../plot/Axis.tsx';
import { axesOn, curve, evenly } from '../plot/Plot.tsx';

const [width, height] = smallSheet;
const axes = axesOn({ left: 6, right: width - 4, top: 0, bottom: height - 4 }, [0, 100], [0, 26]);

const AirAndWoodSmall: SmallFigure = ({ values: v }) => (
  <SmallDrawing view={[0, 0, width, height]}>
    <AxisLines on={axes} />
    <path
      class="hidden-line"
      d={`M${axes.x(v.humidityToday)} ${axes.bottom}V${axes.y(v.moistureToday)}H${axes.left}`}
    />
    <path
      class="curve"
      d={curve(
        axes,
        evenly(tabulatedAir.humidity, 20).map((h) => [h, equilibriumMoisture(v.temperature, h)]),
      )}
    />
    <circle class="mark" cx={axes.x(v.humidityToday)} cy={axes.y(v.moistureToday)} r="3.5" />
  </SmallDrawing>
);

export default AirAndWoodSmall;

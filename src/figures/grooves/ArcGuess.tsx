/** A wall cut through along its groove, where a saw blade stops: how far the groove runs out beyond its full depth is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { arcRun } from '../../calc/grooves/saw-arc.ts';
import { INCH, type UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** What can be marked as the run, mm. */
export const runRange = { low: 0, high: 60 } as const;
/** Radius of a usual blade, mm: 250 mm and 10 in across (common practice). */
const radiusOf = { mm: 125, inch: 5 * INCH } as const;
const [start, top, scale] = [70, 92, 4.2] as const;
export const runFrame: GuessFrame = {
  width: 350,
  height: 190,
  from: [start, top],
  to: [start + runRange.high * scale, top],
};

/** Run of the arc that the usual blade leaves, mm. */
export const runOf = (v: Values, system: UnitSystem): number =>
  arcRun.compute({ R: radiusOf[system], g: v.grooveDepth });

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function ArcGuess({ values: v, system, mark, open }: Props) {
  const R = radiusOf[system] * scale;
  const deep = v.grooveDepth * scale;
  const run = runOf(v, system);
  const place = (mm: number) => placeIn(runFrame, runRange, mm)[0];
  const foot = top + v.wall * scale;
  return (
    <Drawing
      view={[0, 0, runFrame.width, runFrame.height]}
      title="A wall cut through along its groove"
      description={`The groove is ${said(v.grooveDepth, 'length')} deep; the blade has a radius of ${said(radiusOf[system], 'length')}. ${
        open
          ? `Beyond its full depth the groove runs out over ${said(run, 'length')}.`
          : 'How far it runs out is not drawn yet.'
      }`}
    >
      <rect class="wood" x="8" y={top} width="334" height={foot - top} />
      <path class="inside" d={`M8 ${top}H${start}v${deep}H8z`} />
      {open ? (
        <g class="arrives">
          <path class="inside" d={`M${start} ${top}H${place(run)}A${R} ${R} 0 0 1 ${start} ${top + deep}z`} />
          <path
            class="thin"
            d={`M${place(run) + 20} ${top - 0.42 * 80}A${R} ${R} 0 0 1 ${place(run)} ${top}`}
          />
        </g>
      ) : (
        <path class="hidden-line" d={`M${start} ${top - 30}V${top + deep}`} />
      )}
      <Label x={start} y={top - 42}>
        full depth to here
      </Label>
      <NumberLabel
        x={12}
        y={foot + 18}
        anchor="start"
        value={v.grooveDepth}
        kind="length"
        before="groove "
        after=" deep"
      />
      <NumberLabel
        x={342}
        y={foot + 18}
        anchor="end"
        value={2 * radiusOf[system]}
        kind="length"
        before="blade "
        after=" across"
      />
      {mark !== undefined && <path class="ghost" d={`M${place(mark)} ${top - 24}V${top + deep}`} />}
    </Drawing>
  );
}

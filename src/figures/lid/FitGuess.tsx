/** One edge of the lid in its groove, enlarged: fitted on the dampest day, and fitted in today's drier air, where the play is guessed. */
import type { Values } from '../../box/whole/index.ts';
import { panelPractice } from '../../calc/movement/panel.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Play that can be marked, mm. */
export const fitRange = { low: 0, high: 2.4 } as const;
const high = 32;
const rows = { damp: 46, today: 136 } as const;
export const fitFrame: GuessFrame = {
  width: 350,
  height: 234,
  from: [50, rows.today + high / 2],
  to: [326, rows.today + high / 2],
};
const place = (mm: number) => placeIn(fitFrame, fitRange, mm)[0];
/** What is left beside a lid on the dampest day, mm, so that it still runs. */
export const toRun = panelPractice.lidAllowance;

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function FitGuess({ values: v, system, mark, open }: Props) {
  const needed = v.lidPlayNeeded;
  const slot = (y: number) => `M2 ${y - 14}H348V${y - 2}H${place(0)}V${y + high + 2}H348V${y + high + 14}H2z`;
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  const air = said(v.humidityToday, 'percent');
  return (
    <Drawing
      view={[0, 0, fitFrame.width, fitFrame.height]}
      title="A lid fitted on the dampest day, and one fitted in drier air"
      description={`The lid is ${said(v.lidWidth, 'length', { digits: 0 })} wide. On the dampest day it needs ${fine(toRun)} of play. Fitted at ${air} ${
        open ? `it needs ${fine(needed)}.` : 'it needs more; how much is not drawn yet.'
      }`}
    >
      <NumberLabel
        x={4}
        y={rows.damp - 28}
        anchor="start"
        value={toRun}
        kind="length"
        as="exact"
        before="fitted on the dampest day: "
      />
      <path class="wood-end" d={slot(rows.damp)} />
      <path class="wood" d={`M348 ${rows.damp}H${place(toRun)}v${high}H348`} />
      {open ? (
        <NumberLabel
          x={4}
          y={rows.today - 28}
          anchor="start"
          value={needed}
          kind="length"
          as="exact"
          before={`fitted at ${v.humidityToday} % humidity: `}
        />
      ) : (
        <Label x={4} y={rows.today - 28} anchor="start">
          {`fitted at ${v.humidityToday} % humidity: …`}
        </Label>
      )}
      <path class="wood-end" d={slot(rows.today)} />
      {open ? (
        <path class="wood arrives" d={`M348 ${rows.today}H${Math.min(344, place(needed))}v${high}H348`} />
      ) : (
        mark === undefined && (
          <path class="hidden-line" d={`M348 ${rows.today}H${place(toRun)}v${high}H348`} />
        )
      )}
      {mark !== undefined && <path class="ghost" d={`M348 ${rows.today}H${place(mark)}v${high}H348`} />}
      <Label class="on-lid" x={340} y={rows.damp + high / 2} anchor="end">
        lid
      </Label>
      <RuleScale
        from={[place(0), rows.today + high + 22]}
        to={[place(fitRange.high), rows.today + high + 22]}
        length={fitRange.high}
        system={system}
      />
    </Drawing>
  );
}

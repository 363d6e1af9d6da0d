/** One edge of a lid in its groove, enlarged: jammed on the dampest day, and settled in drier air, where its play is guessed. */
import type { Values } from '../../box/whole/index.ts';
import type { UnitSystem } from '../../units/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { type GuessFrame, placeIn } from '../parts/guess-frame.ts';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { RuleScale } from '../parts/RuleScale.tsx';

/** Play that can be marked, mm. */
export const driedRange = { low: 0, high: 2.4 } as const;
const high = 32;
const rows = { damp: 46, dry: 136 } as const;
export const driedFrame: GuessFrame = {
  width: 350,
  height: 234,
  from: [50, rows.dry + high / 2],
  to: [326, rows.dry + high / 2],
};
const place = (mm: number) => placeIn(driedFrame, driedRange, mm)[0];

/** Play it gets back by drying alone, mm. */
export const givenBack = (v: Values): number => v.lidPlayDry;

interface Props {
  values: Values;
  system: UnitSystem;
  mark: number | undefined;
  open: boolean;
}

export function DriedGuess({ values: v, system, mark, open }: Props) {
  const back = givenBack(v);
  const slot = (y: number) => `M2 ${y - 14}H348V${y - 2}H${place(0)}V${y + high + 2}H348V${y + high + 14}H2z`;
  const edge = (y: number, play: number) => `M348 ${y}H${Math.min(344, place(play))}v${high}H348`;
  const percent = (of: number) => said(of, 'percent', { digits: 0 });
  return (
    <Drawing
      view={[0, 0, driedFrame.width, driedFrame.height]}
      title="A lid that jams, and the same lid once it has dried"
      description={`In air of ${percent(v.humidityToday)} the lid is as wide as its grooves. Settled in air of ${percent(v.humidityDry)} ${
        open
          ? `it has ${said(back, 'length', { as: 'fine' })} of play.`
          : 'it has some play; how much is not drawn yet.'
      }`}
    >
      <Label x={4} y={rows.damp - 28} anchor="start">
        {`in air of ${v.humidityToday} %: no play, it jams`}
      </Label>
      <path class="wood-end" d={slot(rows.damp)} />
      <path class="wood jammed" d={edge(rows.damp, 0)} />
      {open ? (
        <NumberLabel
          x={4}
          y={rows.dry - 28}
          anchor="start"
          value={back}
          kind="length"
          as="exact"
          before={`settled in air of ${v.humidityDry} %: `}
        />
      ) : (
        <Label x={4} y={rows.dry - 28} anchor="start">
          {`settled in air of ${v.humidityDry} %: …`}
        </Label>
      )}
      <path class="wood-end" d={slot(rows.dry)} />
      {open ? (
        <path class="wood arrives" d={edge(rows.dry, back)} />
      ) : (
        mark === undefined && <path class="hidden-line" d={edge(rows.dry, 0)} />
      )}
      {mark !== undefined && <path class="ghost" d={edge(rows.dry, mark)} />}
      <Label class="on-lid" x={340} y={rows.damp + high / 2} anchor="end">
        lid
      </Label>
      <RuleScale
        from={[place(0), rows.dry + high + 22]}
        to={[place(driedRange.high), rows.dry + high + 22]}
        length={driedRange.high}
        system={system}
      />
    </Drawing>
  );
}

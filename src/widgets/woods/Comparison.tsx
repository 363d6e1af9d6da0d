/** Up to four woods side by side, and what each does to a panel of the reader's width in the reader's air. */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { NumberField } from '../../box/core/field.ts';
import type { Values } from '../../box/whole/index.ts';
import { equilibriumMoisture } from '../../calc/air/moisture.ts';
import { isRefused } from '../../calc/core/refusal.ts';
import type { Wood } from '../../calc/core/wood.ts';
import { movement, widthFigures } from '../../calc/movement/movement.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { format, INCH, type UnitSystem } from '../../units/index.ts';
import { NumberControl } from '../kit/Control.tsx';
import { useLead } from '../kit/use-lead.ts';
import { columns, mark } from './columns.ts';

const panelWidth: NumberField = {
  type: 'number',
  label: 'width of a panel',
  kind: 'length',
  low: 20,
  high: 600,
  step: 5,
  inchStep: INCH / 4,
  denominator: 16,
};

interface Props {
  woods: readonly Wood[];
  /** The reader's air: driest and dampest. */
  values: Values;
  system: UnitSystem;
  onRemove: (id: string) => void;
}

export function Comparison({ woods, values, system, onRemove }: Props) {
  const width = useSignal(120);
  const section = useRef<HTMLElement>(null);
  const lead = useLead();
  /** A column goes with its button: the next one's comes in its place. */
  const remove = (id: string, place: number) => {
    lead(() => {
      const buttons = section.current?.querySelectorAll<HTMLElement>('button.heading') ?? [];
      return buttons[Math.min(place, buttons.length - 1)] ?? section.current?.querySelector('h2');
    });
    onRemove(id);
  };
  const { temperature, humidityDry, humidityDamp } = values;
  const dry = equilibriumMoisture(temperature, humidityDry);
  const damp = equilibriumMoisture(temperature, humidityDamp);
  const points = (value: number) => format(value, 'points', { system, digits: 1, unit: false });
  const moves = (wood: Wood, ringAngle: number) => {
    const change = movement(width.value, dry, damp, widthFigures(wood, ringAngle));
    return isRefused(change) ? (
      <span class="help">{change.refused}</span>
    ) : (
      <Quantity value={change.change} kind="length" as="fine" round="up" />
    );
  };
  return (
    <section class="comparison" aria-label="Comparison" ref={section}>
      <h2 tabIndex={-1}>Side by side</h2>
      <NumberControl
        field={panelWidth}
        value={width.value}
        system={system}
        set={(value) => {
          width.value = value;
        }}
      />
      <p>
        From the driest to the dampest air of your box,{' '}
        {format(humidityDry, 'percent', { system, digits: 0 })} to{' '}
        {format(humidityDamp, 'percent', { system, digits: 0 })} relative humidity, wood goes from{' '}
        {points(dry)} to {points(damp)} % moisture.
      </p>
      {woods.length === 0 ? (
        <p>Tick a wood in the table below.</p>
      ) : (
        <section class="scroll" aria-label="Woods side by side" tabIndex={0}>
          <table>
            <thead>
              <tr>
                <td />
                {woods.map(({ id, name, isGroup }, place) => (
                  <th key={id} scope="col">
                    {name}
                    {isGroup && <small> group of species</small>}{' '}
                    <button
                      type="button"
                      class="heading"
                      aria-label={`leave out ${name}`}
                      onClick={() => remove(id, place)}
                    >
                      leave out
                    </button>
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              <tr>
                <th scope="row">the panel, flat-sawn, grows</th>
                {woods.map((wood) => (
                  <td key={wood.id}>{moves(wood, 0)}</td>
                ))}
              </tr>
              <tr>
                <th scope="row">the panel, quarter-sawn, grows</th>
                {woods.map((wood) => (
                  <td key={wood.id}>{moves(wood, 90)}</td>
                ))}
              </tr>
              {columns.map(({ key, name, figure, show }) => (
                <tr key={key}>
                  <th scope="row">{name}</th>
                  {woods.map((wood) => {
                    const found = figure(wood);
                    return (
                      <td key={wood.id}>
                        {found ? show(found.value, system) : 'no figure'}
                        {found && mark[found.status] && <sup>{mark[found.status]}</sup>}
                        {found && <small class="source">{found.source}</small>}
                      </td>
                    );
                  })}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </section>
  );
}

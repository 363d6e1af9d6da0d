/** Where the box will live, and the air where the wood lies today. */
import type { NewBoxAnswers } from '../../../box/design/new-box.ts';
import { fields } from '../../../box/subjects/inputs.ts';
import { kindsOfClimate } from '../../../notebook/measure/year.ts';
import type { UnitSystem } from '../../../units/index.ts';
import { DirectNumber } from '../DirectNumber.tsx';
import { Tiles } from './Tiles.tsx';

type Air = NewBoxAnswers['air'];

/** The driest and the dampest month of a kind of climate; today unknown is the middle of them. */
export function airOf(climate: string): Air {
  const { humidity, temperature } = (kindsOfClimate.find(({ id }) => id === climate) ?? kindsOfClimate[0]!)
    .year;
  const [humidityDry, humidityDamp] = [Math.min(...humidity), Math.max(...humidity)];
  return {
    humidityDry,
    humidityDamp,
    humidityToday: Math.round((humidityDry + humidityDamp) / 2),
    temperature: Math.round(temperature.reduce((sum, one) => sum + one, 0) / temperature.length),
  };
}

interface Props {
  climate: string;
  air: Air;
  system: UnitSystem;
  choose: (climate: string) => void;
  setToday: (humidity: number) => void;
}

export function AirQuestion({ climate, air, system, choose, setToday }: Props) {
  const { low, high } = fields.humidityToday;
  return (
    <Tiles
      question="Where will it live?"
      tiles={kindsOfClimate.map(({ id, name }) => {
        const { humidityDry, humidityDamp } = airOf(id);
        return {
          value: id,
          label: name,
          note: `${Math.round(humidityDry)} to ${Math.round(humidityDamp)} %`,
        };
      })}
      chosen={climate}
      choose={choose}
    >
      <DirectNumber
        label="humidity today where the wood lies"
        kind="percent"
        value={air.humidityToday}
        low={low}
        high={high}
        system={system}
        set={(value) => {
          setToday(value);
          return undefined;
        }}
      >
        Read it from a hygrometer. Until you do, it is the middle of that year; the months are invented.
      </DirectNumber>
    </Tiles>
  );
}

/** The weighings of one piece: drawn, listed, and whether it has settled and where it is going. */
import type { Signal } from '@preact/signals';
import { WEIGHING } from '../../../calc/air/acclimatize.ts';
import { moistureFromMass } from '../../../calc/air/moisture.ts';
import { daysApart, daysLeft, endingOf, settledBy } from '../../../calc/air/weighings.ts';
import { isRefused } from '../../../calc/core/refusal.ts';
import { WeighingCourse } from '../../../figures/air/WeighingCourse.tsx';
import { Quantity } from '../../../figures/parts/Quantity.tsx';
import { dayNumber, dayWords } from '../../../notebook/measure/calendar.ts';
import { type Piece, takeWeighing, type WeighingEntry } from '../../../notebook/measure/measurements.ts';
import { toDecimals } from '../../../units/index.ts';

interface PieceSaysProps {
  name: string;
  /** In order of the days, one or more. */
  entries: readonly WeighingEntry[];
  about: Piece;
  after: Signal<string>;
}

const Mass = ({ value }: { value: number }) => <Quantity value={value} kind="mass" />;

export function PieceSays({ name, entries, about, after }: PieceSaysProps) {
  const series = entries.map(({ date, mass }) => [dayNumber(date) ?? 0, mass] as const);
  const apart = daysApart(about.thickness);
  const settled = settledBy(series, apart);
  const ending = endingOf(series, about.reading);
  const now = series.at(-1)![1];
  const left = daysLeft(ending, now, WEIGHING.within);
  const { dry } = about;
  const moistureOf = (mass: number) =>
    dry === undefined ? undefined : moistureFromMass.compute({ m: mass, m_d: dry });
  const moisture = moistureOf(now);
  return (
    <section class="measured-thing" aria-label={name}>
      <h3>{name}</h3>
      <WeighingCourse
        series={series}
        ends={[dayWords(entries[0]!.date), dayWords(entries.at(-1)!.date)]}
        end={isRefused(ending) ? undefined : ending.mass}
      />
      <table class="measured-rows">
        <thead>
          <tr>
            <th scope="col">day</th>
            <th scope="col">weight</th>
            {dry !== undefined && <th scope="col">moisture</th>}
          </tr>
        </thead>
        <tbody>
          {entries.map((entry) => (
            <tr key={entry.date}>
              <th scope="row">
                {dayWords(entry.date)}
                <button
                  type="button"
                  class="quiet screen-only"
                  aria-label={`take out ${name}, ${dayWords(entry.date)}`}
                  onClick={() => {
                    takeWeighing(entry);
                    after.value = `Taken out: ${name}, ${dayWords(entry.date)}.`;
                  }}
                >
                  take out
                </button>
              </th>
              <td>
                <Mass value={entry.mass} />
              </td>
              {dry !== undefined && (
                <td>
                  <Quantity value={moistureOf(entry.mass) ?? Number.NaN} kind="percent" digits={1} />
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      <div class="seen-says">
        {isRefused(settled) ? (
          <p>Whether it has settled cannot be said yet. {settled.refused}</p>
        ) : (
          <p>
            <strong>{settled.settled ? 'Settled' : 'Not settled yet'}:</strong> it changed by{' '}
            {toDecimals(Math.abs(settled.change), 2)} % in {settled.days} days,{' '}
            {toDecimals(Math.abs(settled.perDay), 3)} % a day. The limit is {WEIGHING.within} % between two
            weighings {apart} days apart or more (common practice).
          </p>
        )}
        {moisture !== undefined &&
          (moisture >= 0 ? (
            <p>
              By its oven-dry weight it now holds <Quantity value={moisture} kind="percent" digits={1} />{' '}
              moisture.
            </p>
          ) : (
            <p>It is lighter than the oven-dry weight given, so that weight or this one is wrong.</p>
          ))}
        {isRefused(ending) ? (
          <p>{ending.refused}</p>
        ) : (
          <p>
            In air that stays as it is, it ends at about <Mass value={ending.mass} />: between{' '}
            <Mass value={ending.between[0]} /> and <Mass value={ending.between[1]} /> would fit these
            weighings as well.{' '}
            {left === 0
              ? `It is already within ${WEIGHING.within} % of that.`
              : left !== undefined &&
                `It comes within ${WEIGHING.within} % of that in about ${Math.ceil(left)} days.`}
          </p>
        )}
      </div>
    </section>
  );
}

/** Set-ups, gaps, amounts and times of the build sheet. */
import { times } from '../../box/work/times.ts';
import type { Work } from '../../box/work/work.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import type { Kind } from '../../units/index.ts';
import { Phrase } from '../kit/Phrase.tsx';

export function SetUps({ setUps }: Pick<Work, 'setUps'>) {
  return (
    <table class="set-ups">
      <thead>
        <tr>
          <th scope="col">cut</th>
          <th scope="col">set</th>
        </tr>
      </thead>
      <tbody>
        {setUps.map(({ id, cut, settings, note }) => (
          <tr key={id}>
            <th scope="row">
              <Phrase words={cut} />
            </th>
            <td>
              {settings.map(({ what, value }, index) => (
                <span key={what}>
                  {index > 0 && '; '}
                  {what}{' '}
                  <b>
                    <Quantity {...value} />
                  </b>
                </span>
              ))}
              . <Phrase words={note} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function GapTable({ gaps: { gaps, air } }: Pick<Work, 'gaps'>) {
  const percent = (value: number) => <Quantity value={value} kind="percent" digits={0} />;
  return (
    <>
      <p>
        For wood that lies at {percent(air.today)} relative humidity today,{' '}
        <Quantity value={air.temperature} kind="temperature" digits={0} />, in a year from{' '}
        {percent(air.driest)} to {percent(air.dampest)}. Measured on the day: <span class="blank" /> %, date{' '}
        <span class="blank" />
      </p>
      <table class="gaps">
        <thead>
          <tr>
            <th scope="col">gap</th>
            <th scope="col">leave</th>
            <th scope="col">why</th>
          </tr>
        </thead>
        <tbody>
          {gaps.map(({ what, value, note }) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>
                <Quantity {...value} />
              </td>
              <td>{note}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** A range of numbers in one unit. */
function Range({ low, high, kind }: { low: number; high: number; kind: Kind }) {
  const digits = kind === 'mass' ? 2 : kind === 'volume' ? 1 : 0;
  return (
    <b>
      <Quantity value={low} kind={kind} digits={digits} /> to{' '}
      <Quantity value={high} kind={kind} digits={digits} />
    </b>
  );
}

export function Amounts({ amounts }: Pick<Work, 'amounts'>) {
  const { cornerArea, otherArea, glue, clampedArea, force, finishArea, finish } = amounts;
  return (
    <ul class="amounts">
      <li>
        Glue: <Range {...glue} kind="mass" /> on <Quantity value={cornerArea + otherArea} kind="area" />,
        spread {glue.known}; pour more, some stays on the brush.
      </li>
      <li>
        Clamps: the highest corner, <Quantity value={clampedArea} kind="area" />, takes{' '}
        <Range {...force} kind="force" /> by {force.known}. Tape or a strap gives far less and holds where the
        joint fits: pressure buys contact only.
      </li>
      <li>
        Finish: <Range {...finish} kind="volume" /> for a coat on <Quantity value={finishArea} kind="area" />,
        wiped to brushed, {finish.known}.
      </li>
      <li>
        Time:
        {times.map(({ what, takes, known }) => (
          <span key={what}>
            {' '}
            {what}: {takes} <small>({known})</small>.
          </span>
        ))}
      </li>
    </ul>
  );
}

/** Coats wiped on and coats brushed on, as layers on the wood, beside a sheet of paper; all to one scale. */
import { PAPER } from '../../calc/finish/coats.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

/** Drawing units for a mm. */
const enlarged = 500;
const [wide, face] = [88, 120] as const;

interface Props {
  values: { coats: number; wiped: number; brushed: number; wipedCoat: number; brushedCoat: number };
}

export function FilmsOnPaper({ values: v }: Props) {
  const films = [
    { word: 'wiped', thick: v.wiped, one: v.wipedCoat },
    { word: 'brushed', thick: v.brushed, one: v.brushedCoat },
    { word: 'paper', thick: PAPER, one: PAPER },
  ];
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  return (
    <Drawing
      view={[0, 0, 350, 180]}
      title="Films on wood beside a sheet of paper"
      description={`${v.coats} wiped coats are ${fine(v.wiped)} thick, as many brushed ones ${fine(v.brushed)}, a sheet of paper ${fine(PAPER)}. Drawn ${enlarged} times as large.`}
    >
      <rect class="wood" x="10" y={face} width="330" height="28" />
      {films.map(({ word, thick, one }, at) => {
        const x = 25 + at * 106;
        const top = face - thick * enlarged;
        return (
          <g key={word}>
            <rect class="thing" x={x} y={top} width={wide} height={thick * enlarged} />
            <path
              class="thin"
              d={Array.from(
                { length: Math.round(thick / one) - 1 },
                (_, i) => `M${x} ${face - (i + 1) * one * enlarged}h${wide}`,
              ).join('')}
            />
            <NumberLabel x={x + wide / 2} y={top - 12} value={thick} kind="length" as="exact" />
            <Label x={x + wide / 2} y={face + 44}>
              {word}
            </Label>
          </g>
        );
      })}
    </Drawing>
  );
}

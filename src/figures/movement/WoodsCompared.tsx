/** How far a panel goes from its driest to its dampest day in a few woods, flat-sawn and quarter-sawn, beside the play it has. */
import { scaleLinear } from 'd3-scale';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';

export interface WoodSwing {
  readonly name: string;
  /** The reader's own wood. */
  readonly own: boolean;
  /** Movement over the year, mm; NaN where there is no figure. */
  readonly flat: number;
  readonly quarter: number;
}

const left = 4;
const right = 278;
const row = 52;

export function WoodsCompared({
  woods,
  play,
  part,
}: {
  woods: readonly WoodSwing[];
  play: number;
  part: string;
}) {
  const known = (value: number) => (Number.isFinite(value) ? value : 0);
  const most = Math.max(play, 0.1, ...woods.flatMap(({ flat, quarter }) => [known(flat), known(quarter)]));
  const x = scaleLinear([0, most], [left, right]);
  const words = (value: number) =>
    Number.isFinite(value) ? said(value, 'length', { as: 'fine' }) : 'no figure';
  const height = woods.length * row;
  const bar = (value: number, y: number, kind: string) =>
    Number.isFinite(value) ? (
      <>
        <rect class={kind} x={left} y={y} width={Math.max(0, x(value) - left)} height={13} />
        <NumberLabel x={346} y={y + 7} anchor="end" value={value} kind="length" as="exact" />
      </>
    ) : (
      <Label x={left} y={y + 7} anchor="start">
        no figure here
      </Label>
    );
  return (
    <Drawing
      view={[0, 0, 350, height + 40]}
      title={`The ${part} from its driest to its dampest day, in several woods`}
      description={woods
        .map(
          ({ name, flat, quarter }) => `${name}: flat-sawn ${words(flat)}, quarter-sawn ${words(quarter)}.`,
        )
        .join(' ')}
    >
      {woods.map(({ name, own, flat, quarter }, i) => (
        <g key={name} class={own ? 'current' : undefined}>
          <Label x={left} y={i * row + 9} anchor="start">
            {own ? `${name} (yours)` : name}
          </Label>
          {bar(flat, i * row + 19, 'wood')}
          {bar(quarter, i * row + 33, 'end')}
        </g>
      ))}
      <path class="force" d={woods.map((_, i) => `M${x(known(play))} ${i * row + 16}v33`).join('')} />
      <NumberLabel
        x={left}
        y={height + 10}
        anchor="start"
        value={play}
        kind="length"
        as="fine"
        before="mark: the play you leave, "
      />
      <Label x={left} y={height + 28} anchor="start">
        plain bar flat-sawn, hatched quarter-sawn
      </Label>
    </Drawing>
  );
}

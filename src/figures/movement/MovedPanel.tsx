/** Both edges of a bottom in its grooves, settled in two houses one after the other: held in the middle, and crept to the left. */
import type { Values } from '../../box/whole/index.ts';
import { Drawing } from '../parts/Drawing.tsx';
import { Label, NumberLabel } from '../parts/Label.tsx';
import { said } from '../parts/Quantity.tsx';
import { column, Edges, edge } from './PanelSection.tsx';

interface Props {
  values: Values;
  /** Humidity of the two houses, %, and the play in each, both sides together, mm. */
  humidity: readonly [before: number, after: number];
  play: readonly [before: number, after: number];
}

export function MovedPanel({ values: v, humidity, play }: Props) {
  const groove = v.grooveDepth;
  const scale = edge.groove / groove;
  const fine = (mm: number) => said(mm, 'length', { as: 'fine' });
  const known = Number.isFinite(play[1]);
  return (
    <Drawing
      view={[0, 0, 350, 150]}
      title="A bottom in two houses"
      description={
        known
          ? `Play before the move ${fine(play[0])}, after it ${fine(play[1])}, both sides together.`
          : 'There is no movement figure for this wood in this air.'
      }
    >
      <Label x={column.lefts[0]} y={10} anchor="start">
        central: each gap
      </Label>
      <Label x={column.lefts[1]} y={10} anchor="start">
        crept: gap at right
      </Label>
      {(['before', 'after'] as const).map((word, at) => {
        const y = 32 + at * 62;
        const now = play[at]!;
        return (
          <g key={word}>
            <NumberLabel
              x={0}
              y={y}
              anchor="start"
              value={humidity[at]!}
              kind="percent"
              digits={0}
              before={`${word}, in air of `}
            />
            {Number.isFinite(now) ? (
              <>
                <Edges x={column.lefts[0]} y={y + 11} near={now / 2} far={now / 2} {...{ scale, groove }} />
                <Edges
                  x={column.lefts[1]}
                  y={y + 11}
                  near={Math.min(0, now)}
                  far={now}
                  {...{ scale, groove }}
                />
              </>
            ) : (
              <Label x={175} y={y + 26}>
                no figure for this wood in this air
              </Label>
            )}
          </g>
        );
      })}
    </Drawing>
  );
}

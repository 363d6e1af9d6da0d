/** Two arrows on a panel, to one scale of force: what its lip takes, and dashed what the reader expects. */
import { Label, NumberLabel } from '../parts/Label.tsx';

/** Longest arrow, in user units. */
const longest = 46;

interface PushProps {
  /** Inside face, and the face of the panel that is pushed. */
  x: number;
  at: number;
  up?: true;
  /** N; NaN where the wood's strength is not known. */
  takes: number;
  push: number;
  /** The force that has the longest arrow; a larger one is drawn as long and broken. */
  most: number;
}

export function PushArrows({ x, at, up, takes, push, most }: PushProps) {
  const reach = (force: number) => (Math.min(force, most) / most) * longest;
  const away = up ? 1 : -1;
  const arrow = (across: number, force: number, dash?: string) => (
    <line
      class="force"
      x1={x + across}
      y1={at + away * (reach(force) + 2)}
      x2={x + across}
      y2={at + away * 2}
      stroke-dasharray={dash}
      marker-end="url(#arrow)"
    />
  );
  /** Beyond the arrow's end, and never on its head. */
  const tail = (force: number) => at + away * (Math.max(14, reach(force)) + 12);
  return (
    <>
      {Number.isFinite(takes) ? (
        <>
          {arrow(40, takes)}
          {takes > most && (
            <path
              class="force"
              d={`M${x + 34} ${at + away * 30} l12 -5 M${x + 34} ${at + away * 30 + 6} l12 -5`}
            />
          )}
          <NumberLabel x={x + 40} y={tail(takes)} value={takes} kind="force" digits={0} before="takes " />
        </>
      ) : (
        <Label x={x + 40} y={tail(0)}>
          not known
        </Label>
      )}
      {arrow(122, push, '5 4')}
      <NumberLabel x={x + 122} y={tail(push)} value={push} kind="force" digits={0} before="push " />
    </>
  );
}

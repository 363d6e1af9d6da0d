/**
 * The board on the log end as something to take hold of: drag it, or move it with the arrow keys and turn it with
 * [ and ]; the knob at its end turns it too. Lies over the drawing. The sliders beside the figure do the same.
 */
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { cutOf, ringAngle } from '../../../calc/board/rings.ts';
import { logRadius, logSheet } from '../../../figures/board/LogEnd.tsx';
import { format, type UnitSystem } from '../../../units/index.ts';
import { fields } from './fields.ts';
import { piece, place } from './state.ts';

const clamp = (value: number, most: number) => Math.min(most, Math.max(-most, value));
/** A whole turn of the board shows the same board: turns are kept within a quarter either way. */
const withinQuarter = (degrees: number) => degrees - 180 * Math.round(degrees / 180);

/** Moves the middle of the board, kept inside the log, to the reader's own shop sizes. */
function moveTo(across: number, up: number, step: number) {
  const inside = Math.min(1, logRadius / Math.hypot(across, up));
  const [x, y] = [across, up].map((value) => Math.round((value * inside) / step) * step);
  place({ center: [clamp(x!, logRadius), clamp(y!, logRadius)] });
}
const turnTo = (degrees: number) => place({ turn: withinQuarter(Math.round(degrees)) });

/** Keys by name: how far across, how far up, and how many degrees of turn. */
const keys: Readonly<Record<string, readonly [across: number, up: number, turn: number]>> = {
  ArrowLeft: [-1, 0, 0],
  ArrowRight: [1, 0, 0],
  ArrowUp: [0, 1, 0],
  ArrowDown: [0, -1, 0],
  '[': [0, 0, 1],
  ']': [0, 0, -1],
};

interface HandleProps {
  system: UnitSystem;
  /** Id of the text that says how to use it. */
  help: string;
  /** The drawing under the handles. */
  children: ComponentChildren;
}

export function BoardHandle({ system, help, children }: HandleProps) {
  const sheet = useRef<HTMLDivElement>(null);
  /** While dragging: the drawing's place on the screen, where the board was taken, and which end the knob is at. */
  const held = useRef<{ of: DOMRect; x: number; y: number; end: number } | undefined>(undefined);
  const { center, width, thickness, turn } = piece.value;
  const step = system === 'inch' ? fields.up.inchStep! : fields.up.step;
  const angle = (turn * Math.PI) / 180;
  const out = [Math.cos(angle), Math.sin(angle)] as const;
  // The knob stands at the end that is nearer to the pith, so that it stays on the sheet.
  const end = held.current?.end ?? (center[0] * out[0] + center[1] * out[1] > 0 ? -1 : 1);

  const at = ({ clientX, clientY }: PointerEvent, { left, top, width, height }: DOMRect) =>
    [
      (((clientX - left) / width) * 2 - 1) * logSheet,
      -(((clientY - top) / height) * 2 - 1) * logSheet,
    ] as const;
  const grab = (event: PointerEvent & { currentTarget: HTMLElement }) => {
    const of = sheet.current!.getBoundingClientRect();
    const [x, y] = at(event, of);
    held.current = { of, x: x - center[0], y: y - center[1], end };
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const drop = () => {
    held.current = undefined;
  };
  const drag = (event: PointerEvent) => {
    if (!held.current) return;
    const [x, y] = at(event, held.current.of);
    moveTo(x - held.current.x, y - held.current.y, step);
  };
  const swing = (event: PointerEvent) => {
    if (!held.current) return;
    const [x, y] = at(event, held.current.of);
    const to = Math.atan2((y - center[1]) * end, (x - center[0]) * end);
    const turned = withinQuarter(Math.round((to * 180) / Math.PI));
    // Past a quarter the board is the same with its ends changed over: the hand stays with its end.
    if (Math.abs(turned - turn) > 90) held.current.end = -end;
    turnTo(turned);
  };
  const press = (event: KeyboardEvent, only?: 'turn') => {
    const [across, up, about] = keys[event.key] ?? [0, 0, 0];
    if (!(event.key in keys)) return;
    event.preventDefault();
    const times = event.shiftKey ? 10 : 1;
    if (only === 'turn' || about) turnTo(turn + times * (about || up + across));
    else moveTo(center[0] + across * times * step, center[1] + up * times * step, step);
  };

  const spoken = (value: number) =>
    format(Math.abs(value), 'length', { system, digits: 0, denominator: 16, spoken: true });
  const where = `${spoken(center[1])} ${center[1] < 0 ? 'below' : 'above'} the pith, ${spoken(center[0])} to the ${center[0] < 0 ? 'left' : 'right'}, turned ${turn} degrees, ${cutOf(ringAngle(piece.value))}`;
  const percent = (mm: number) => `${((mm / logSheet + 1) * 50).toFixed(3)}%`;
  const share = (mm: number) => `${((mm / logSheet) * 50).toFixed(3)}%`;
  const tip = [center[0] + (end * out[0] * width) / 2, center[1] + (end * out[1] * width) / 2] as const;
  const common = {
    onPointerDown: grab,
    onPointerUp: drop,
    onPointerCancel: drop,
    onLostPointerCapture: drop,
  } as const;
  return (
    <div class="log-sheet" ref={sheet}>
      {children}
      <div
        {...common}
        role="slider"
        tabIndex={0}
        class="handle"
        aria-label="board in the log"
        aria-describedby={help}
        aria-valuemin={-logRadius}
        aria-valuemax={logRadius}
        aria-valuenow={Math.round(center[1])}
        aria-valuetext={where}
        style={{
          left: percent(center[0]),
          top: percent(-center[1]),
          width: share(width),
          height: share(thickness),
          transform: `translate(-50%, -50%) rotate(${-turn}deg)`,
        }}
        onPointerMove={drag}
        onKeyDown={press}
      />
      <div
        {...common}
        role="slider"
        tabIndex={0}
        class="handle knob"
        aria-label="turn of the board, knob"
        aria-valuemin={-90}
        aria-valuemax={90}
        aria-valuenow={turn}
        aria-valuetext={`${turn} degrees`}
        style={{
          left: percent(tip[0]),
          top: percent(-tip[1]),
          transform: `translate(-50%, -50%) rotate(${-turn}deg) translateX(${end * 1.6}rem)`,
        }}
        onPointerMove={swing}
        onKeyDown={(event) => press(event, 'turn')}
      />
    </div>
  );
}

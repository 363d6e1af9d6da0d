/** Words of corners: two walls of the box from above, or one from outside; mm in true proportion. */
import { fingerLayout } from '../../calc/joints/finger-layout.ts';
import { SmallDrawing } from '../parts/SmallDrawing.tsx';
import { drawnFor, Meant } from './meant.tsx';

/** From above: a wall that comes from the right meets one that goes down. */
export const cornerWords = drawnFor(['butt-joint', 'miter', 'heel', 'spline', 'key', 'proud'], (name, v) => {
  const { wall: t, keyThickness } = v;
  const [wide, high] = [3.4 * t, 2.4 * t];
  const mitered = name === 'miter' || name === 'heel' || name === 'spline' || name === 'key';
  const over = name === 'proud' ? t / 8 : 0;
  const half = keyThickness / 2 / Math.SQRT2;
  const reach = t / 4;
  const areas = {
    'butt-joint': `M${t} 0V${t}`,
    miter: `M0 0L${t} ${t}`,
    // The inside edge, marked by a ring.
    heel: `M${t * 0.85} ${t}a${t * 0.15} ${t * 0.15} 0 1 0 ${t * 0.3} 0a${t * 0.15} ${t * 0.15} 0 1 0 ${-t * 0.3} 0Z`,
    // Square to the miter, half of it in each wall.
    spline: `M${t / 2 + reach - half} ${t / 2 - reach - half}l${2 * half} ${2 * half}l${-2 * reach} ${2 * reach}l${-2 * half} ${-2 * half}Z`,
    // Let in across the outside of the corner and trimmed flush with both faces.
    key: `M0 0H${1.2 * t}L0 ${1.2 * t}Z`,
    proud: `M${-over} 0H0V${t}H${-over}Z`,
  };
  return (
    <SmallDrawing view={[-over, 0, wide, high]}>
      {mitered ? (
        <>
          <path class="wood" d={`M0 0L${t} ${t}V${2 * high}H0Z`} />
          <path class="wood" d={`M0 0H${2 * wide}V${t}H${t}Z`} />
        </>
      ) : (
        <>
          <path class="wood" d={`M0 ${name === 'proud' ? t : 0}H${t}V${2 * high}H0Z`} />
          <path
            class={name === 'proud' ? 'wood-end' : 'wood'}
            d={`M${name === 'proud' ? -over : t} 0H${2 * wide}V${t}H${name === 'proud' ? -over : t}Z`}
          />
        </>
      )}
      <Meant d={areas[name]} />
    </SmallDrawing>
  );
});

/** From outside: fingers of this wall, between them the ends of its mate's. A sliver is left of a wall that is too high. */
export const fingerWords = drawnFor(['finger', 'sliver', 'step', 'cheek', 'socket'], (name, v) => {
  const { wall, fingerWidth: f } = v;
  const shown = name === 'sliver' ? 5 * f + f / 4 : 5 * f;
  const wide = shown * 1.3;
  const all = fingerLayout(shown, f);
  const [lowest, next] = all;
  const last = all.at(-1)!;
  // A cheek is seen on its edge, as a line.
  const side = { from: all[2]!.to, to: all[2]!.to };
  const socket = all[1]!;
  const meant = {
    finger: all[2]!,
    sliver: last,
    step: { from: lowest!.from, to: next!.to },
    cheek: side,
    socket,
  }[name];
  return (
    <SmallDrawing view={[0, 0, wide, shown]}>
      <rect class="wood" width={2 * wide} height={shown} />
      {all.map(({ from, to, wall: of }) => (
        <rect
          key={from}
          class={of === 'first' ? 'wood' : 'wood-end'}
          y={shown - to}
          width={wall}
          height={to - from}
        />
      ))}
      <Meant d={`M0 ${shown - meant.to}h${wall}V${shown - meant.from}H0Z`} />
    </SmallDrawing>
  );
});

/** The face of a wall with tails, as many as the box has when it is dovetailed; between them the ends of the pins. */
export const dovetailWords = drawnFor(['dovetail', 'tail', 'pin', 'half-pin'], (name, v) => {
  const { wall: t, tailCount: count, pinWidth: pin, dovetailSlope: slope, jointedHeight: height } = v;
  const pitch = height / count;
  const flare = t / slope;
  const wide = height * 1.3;
  /** Each tail is widest at its end, on the left; `pin` is the narrow side of what stands between two. */
  const tail = (i: number) => {
    const [from, to] = [i * pitch + pin / 2, (i + 1) * pitch - pin / 2];
    return `M0 ${from}L${t} ${from + flare}V${to - flare}L0 ${to}Z`;
  };
  const between = `M0 ${pitch - pin / 2}L${t} ${pitch - pin / 2 - flare}V${pitch + pin / 2 + flare}L0 ${pitch + pin / 2}Z`;
  const areas = {
    dovetail: Array.from({ length: count }, (_, i) => tail(i)).join(''),
    tail: tail(0),
    pin: between,
    'half-pin': `M0 0H${t}V${pin / 2 + flare}L0 ${pin / 2}Z`,
  };
  return (
    <SmallDrawing view={[0, 0, wide, height]}>
      <rect class="wood" width={2 * wide} height={height} />
      <rect class="wood-end" width={t} height={height} />
      {Array.from({ length: count }, (_, i) => (
        <path key={i} class="wood" d={tail(i)} />
      ))}
      <Meant d={areas[name]} />
    </SmallDrawing>
  );
});

/** A batch of finish: the faces it is for, and its liquids in layers. */
import { Num, Sketch, Sym } from './sketch.tsx';

/** A batch in a glass, in two layers by their parts. */
export function Layers({ title, batch, first }: { title: string; batch: number; first: number }) {
  const deep = 84;
  const lower = (first / batch) * deep;
  return (
    <Sketch title={title} height={112}>
      <rect class="inside" x="14" y={14} width="56" height={deep - lower} />
      <rect class="water" x="14" y={14 + deep - lower} width="56" height={lower} />
      <path class="curve" d="M14 6V98H70V6" />
      <Num value={batch - first} kind="volume" digits={1} x={78} y={14 + (deep - lower) / 2} anchor="start" />
      <Num value={first} kind="volume" digits={1} x={78} y={98 - lower / 2} anchor="start" />
    </Sketch>
  );
}

/** Three sides of a box whose faces are counted in pairs. */
export function SixFaces({
  title,
  sides: [L, b, H],
}: {
  title: string;
  sides: readonly [number, number, number];
}) {
  const scale = 100 / L;
  const [l, w, h] = [L * scale, b * scale * 0.5, H * scale];
  const top = 20 + w;
  return (
    <Sketch title={title} height={top + h + 22}>
      <path class="wood" d={`M12 ${top}h${l}v${h}h${-l}z`} />
      <path class="wood" d={`M12 ${top}l${w} ${-w}h${l}l${-w} ${w}z`} />
      <path class="wood-end" d={`M${12 + l} ${top}l${w} ${-w}v${h}l${-w} ${w}z`} />
      <Sym of="L" x={12 + l / 2} y={top + h + 11} />
      <Sym of="b" x={12 + l + w / 2 + 10} y={top + h - w / 2 + 8} />
      <Sym of="H" x={4} y={top + h / 2} />
    </Sketch>
  );
}

/** What an exercise gives about a lid that is sawn off: the shut box from the side, as glued up. The two heights asked for are marked. */
import { Arrows } from '../parts/Arrows.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { type GivenProps, numbersOf } from '../parts/given.ts';
import { Label } from '../parts/Label.tsx';

const [width, left, right, head] = [350, 50, 230, 10] as const;

export function SawnGiven(given: GivenProps) {
  const { height, lid, kerf, text } = numbersOf(given, 'height', 'lid', 'kerf');
  const scale = 150 / height;
  const cut = head + lid * scale;
  const lower = cut + kerf * scale;
  const foot = lower + (height - lid) * scale;
  return (
    <Drawing
      view={[0, 0, width, foot + 12]}
      title="The shut box as glued up, from the side"
      description={`The lid is ${text(lid)} high, the saw cut below it ${text(kerf)}. The height as glued up, and that of the lower side of the cut, are asked.`}
    >
      <rect class="wood" x={left} y={head} width={right - left} height={foot - head} />
      <rect class="inside" x={left} y={cut} width={right - left} height={lower - cut} />
      <Label x={(left + right) / 2} y={lower + 14}>
        saw cut {text(kerf)}
      </Label>
      <Arrows from={[left - 16, head]} to={[left - 16, foot]} />
      <Label x={left - 32} y={(head + foot) / 2}>
        ?
      </Label>
      <Arrows from={[right + 16, head]} to={[right + 16, cut]} />
      <Label x={right + 26} y={(head + cut) / 2} anchor="start">
        lid {text(lid)}
      </Label>
      <Arrows from={[right + 16, lower]} to={[right + 16, foot]} />
      <Label x={right + 26} y={(lower + foot) / 2} anchor="start">
        ?
      </Label>
    </Drawing>
  );
}

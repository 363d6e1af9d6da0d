/** What an exercise gives about a groove: the wall cut through, with groove and lip. What is left behind the groove is the question. */
import { Arrows } from '../parts/Arrows.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { type GivenProps, numbersOf } from '../parts/given.ts';
import { Label } from '../parts/Label.tsx';

const [width, left, head, thick] = [350, 70, 44, 130] as const;

export function WebGiven(given: GivenProps) {
  const { wall, depth, lip, text } = numbersOf(given, 'wall', 'depth', 'lip');
  const scale = thick / wall;
  const face = left + thick;
  const bottom = face - depth * scale;
  // How wide the groove is, and how high the wall, is not given and does not count.
  const [top, grooveTop] = [head, head + 46];
  const grooveFoot = grooveTop + 40;
  const foot = grooveFoot + lip * scale;
  const middle = (grooveTop + grooveFoot) / 2;
  return (
    <Drawing
      view={[0, 0, width, foot + 12]}
      title="The wall cut through, inside on the right"
      description={`The wall is ${text(wall)} thick. The groove goes ${text(depth)} into it. Below it stands a lip ${text(lip)} high. What is left behind the groove is asked.`}
    >
      <path
        class="wood-end"
        d={`M${left} ${top}H${face}V${grooveTop}H${bottom}V${grooveFoot}H${face}V${foot}H${left}Z`}
      />
      <Arrows from={[left, head - 12]} to={[face, head - 12]} />
      <Label x={(left + face) / 2} y={head - 27}>
        wall {text(wall)}
      </Label>
      <Arrows from={[left, middle]} to={[bottom, middle]} />
      <Label x={(left + bottom) / 2} y={middle - 12}>
        ?
      </Label>
      <Arrows from={[bottom, middle]} to={[face, middle]} />
      <Label x={face + 8} y={middle} anchor="start">
        groove {text(depth)} deep
      </Label>
      <Arrows from={[face + 14, grooveFoot]} to={[face + 14, foot]} />
      <Label x={face + 24} y={(grooveFoot + foot) / 2} anchor="start">
        lip {text(lip)}
      </Label>
    </Drawing>
  );
}

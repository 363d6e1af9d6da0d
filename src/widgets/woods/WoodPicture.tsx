/** The scatter plot of the woods shown, with the slider that walks through its points. */
import { useId } from 'preact/hooks';
import type { Wood } from '../../calc/core/wood.ts';
import { shapes, WoodScatter } from '../../figures/movement/WoodScatter.tsx';
import { Slider } from '../kit/Slider.tsx';
import { densityOf, ratioOf } from './columns.ts';

interface Props {
  woods: readonly Wood[];
  /** The wood with the ring around its point. */
  marked: string | undefined;
  onMark: (id: string) => void;
  picked: readonly string[];
  onPick: (id: string) => void;
}

export function WoodPicture({ woods, marked, onMark, picked, onPick }: Props) {
  const id = useId();
  const points = woods
    .flatMap((wood) => {
      const [density, ratio] = [densityOf(wood)?.value, ratioOf(wood)?.value];
      return density && ratio && wood.tangentialCoefficient
        ? [{ id: wood.id, name: wood.name, density, ratio, movement: wood.tangentialCoefficient.value * 100 }]
        : [];
    })
    .sort((a, b) => a.density - b.density);
  const place = Math.max(
    0,
    points.findIndex((point) => point.id === marked),
  );
  const here = points[place];
  return (
    <section class="lab" aria-label="Movement against density">
      <h2>Movement against density</h2>
      <div class="picture">
        <WoodScatter points={points} chosen={marked} onPick={onMark} />
        <p class="help">Shapes: {shapes.map(({ name }) => name).join(', ')}.</p>
      </div>
      <div class="controls">
        {here ? (
          <p>
            <label for={id}>walk through the points, by density</label>
            <Slider
              id={id}
              min={0}
              max={points.length - 1}
              value={place}
              aria-valuetext={here.name}
              set={(count) => {
                const point = points[count];
                if (point) onMark(point.id);
              }}
            />
            <strong>{here.name}</strong>{' '}
            <button type="button" class="quiet" onClick={() => onPick(here.id)}>
              {picked.includes(here.id) ? 'leave out of the comparison' : 'compare it'}
            </button>
          </p>
        ) : (
          <p>None of these woods has both figures.</p>
        )}
        <p class="help">The same woods stand in the table below.</p>
      </div>
    </section>
  );
}

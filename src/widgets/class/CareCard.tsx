/** A card to go with the reader's box: its wood, the air it is made for, and what to do when it sticks or rattles. */
import { fields } from '../../box/subjects/inputs.ts';
import { wholeModel } from '../../box/whole/index.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { useStore } from '../kit/use-store.ts';

const Percent = ({ value }: { value: number }) => <Quantity value={value} kind="percent" digits={0} />;
const Gap = ({ value }: { value: number }) => <Quantity value={value} kind="length" as="fine" />;

export default function CareCard() {
  const store = useStore(wholeModel);
  const v = store.values.value;
  const slides = v.kind === 'sliding';
  return (
    <section class="care-card" ref={store.ref} aria-labelledby="care-title">
      <h2 id="care-title">{v.name}</h2>
      <p>
        Wood: {fields.species.options[v.species]}. Made by <span class="write-line" />,{' '}
        <span class="write-line" />
      </p>
      <p>
        Made in air of <Percent value={v.humidityToday} />. It is made for air from{' '}
        <Percent value={v.humidityDry} /> to <Percent value={v.humidityDamp} />. Its walls take about{' '}
        <Quantity value={v.waitWall} kind="days" digits={0} /> to follow a change.
      </p>
      {slides && (
        <p>
          Play of the lid, both sides together: <Gap value={v.lidPlayToday} /> today, about{' '}
          {v.lidPlayDamp > 0 ? <Gap value={v.lidPlayDamp} /> : 'none'} in the dampest air,{' '}
          <Gap value={v.lidPlayDry} /> in the driest.
        </p>
      )}
      <ul>
        <li>The lid sticks: leave it open in drier air for a week or two. Do not force it.</li>
        <li>The lid or the bottom rattles in dry air: wait, it comes back.</li>
        {v.bottomFit === 'floating' && (
          <li>The bottom is loose on purpose. Never glue it or fill its gap.</li>
        )}
        <li>Keep it out of the sun, and away from heaters and damp walls.</li>
        <li>Wipe it with a dry cloth. No water, and no oil inside.</li>
      </ul>
    </section>
  );
}

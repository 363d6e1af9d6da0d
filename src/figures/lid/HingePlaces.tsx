/** The back of a hinged box: where its two hinges lie, one length from either end. */
import type { Values } from '../../box/whole/index.ts';
import { Dimension } from '../parts/Dimension.tsx';
import { Drawing } from '../parts/Drawing.tsx';
import { said } from '../parts/Quantity.tsx';

export function HingePlaces({ values: v }: { values: Values }) {
  const run = Math.max(v.outsideLength, v.outsideWidth);
  const scale = Math.min(330 / run, 130 / v.outsideHeight);
  const [left, top] = [(350 - run * scale) / 2, 12];
  const line = top + v.lidHeight * scale;
  const foot = top + v.outsideHeight * scale;
  const leaf = v.hingeLength * scale;
  const fits = v.hingeLength * 4 <= run + 1e-6;
  const places = fits ? [left + leaf, left + run * scale - 2 * leaf] : [];
  return (
    <Drawing
      view={[0, 0, 350, foot + 46]}
      title="Two hinges on the back"
      description={
        fits
          ? `On a back ${said(run, 'length', { as: 'size' })} long each hinge, ${said(v.hingeLength, 'length')} long, lies as far from its end.`
          : `Two hinges of ${said(v.hingeLength, 'length')}, each as far from its end, do not fit on a back ${said(run, 'length', { as: 'size' })} long.`
      }
    >
      <rect class="wood" x={left} y={top} width={run * scale} height={foot - top} />
      <path class="axis" d={`M${left} ${line}H${left + run * scale}`} />
      {places.map((x) => (
        <rect key={x} class="wood-end" x={x} y={line - 5} width={leaf} height={10} />
      ))}
      {fits && (
        <>
          <path
            class="thin"
            d={`M${left} ${foot + 2}v18M${left + leaf} ${line + 8}V${foot + 20}M${left + 2 * leaf} ${line + 8}V${foot + 20}`}
          />
          <Dimension
            from={[left, foot + 14]}
            to={[left + leaf, foot + 14]}
            value={v.hingeLength}
            side="after"
            digits={0}
            denominator={8}
            text={13}
          />
          <Dimension
            from={[left + leaf, foot + 14]}
            to={[left + 2 * leaf, foot + 14]}
            value={v.hingeLength}
            side="after"
            digits={0}
            denominator={8}
            text={13}
          />
        </>
      )}
    </Drawing>
  );
}

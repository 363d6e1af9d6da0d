/** Labs of the proportion lesson. */
import { InsideOutside } from '../../figures/InsideOutside.tsx';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { Lab, type LabProps, type LabSpec } from '../Lab.tsx';

export const labs: Record<string, LabSpec> = {
  'inside-outside': {
    title: 'Inside and outside of one box',
    figure: InsideOutside,
    controls: ['wall'],
    more: ['contentsLength', 'contentsWidth', 'clearance'],
    results: ['outsideRatio', 'insideRatio'],
    says: (v) => (
      <>
        With <Quantity value={v.wall} kind="length" /> walls the inside is{' '}
        <Quantity value={v.insideRatio} kind="ratio" /> times as long as wide; the outside{' '}
        <Quantity value={v.outsideRatio} kind="ratio" /> times.
      </>
    ),
  },
};

export default function Proportion({ name, ...props }: Omit<LabProps, 'spec'> & { name: string }) {
  return <Lab spec={labs[name]!} {...props} />;
}

/** Labs of the lesson on wall thickness and size. */
import { Lab, type LabProps, type LabSpec } from '../Lab.tsx';

export const labs: Record<string, LabSpec> = {};

export default function Walls({ name, ...props }: Omit<LabProps, 'spec'> & { name: string }) {
  return <Lab spec={labs[name]!} {...props} />;
}

/** Labs of the lesson on joint spacing. */
import { Lab, type LabProps, type LabSpec } from '../Lab.tsx';

export const labs: Record<string, LabSpec> = {};

export default function Joints({ name, ...props }: Omit<LabProps, 'spec'> & { name: string }) {
  return <Lab spec={labs[name]!} {...props} />;
}

/** Labs of the lesson on wood movement. */
import { Lab, type LabProps, type LabSpec } from '../Lab.tsx';

export const labs: Record<string, LabSpec> = {};

export default function Movement({ name, ...props }: Omit<LabProps, 'spec'> & { name: string }) {
  return <Lab spec={labs[name]!} {...props} />;
}

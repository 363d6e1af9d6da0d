/** Labs of the lesson on groove margins. */
import { Lab, type LabProps, type LabSpec } from '../Lab.tsx';

export const labs: Record<string, LabSpec> = {};

export default function Grooves({ name, ...props }: Omit<LabProps, 'spec'> & { name: string }) {
  return <Lab spec={labs[name]!} {...props} />;
}

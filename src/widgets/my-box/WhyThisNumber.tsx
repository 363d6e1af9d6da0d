/** The reason of a number that is said beside it. */
import type { Working } from '../../calc/core/working.ts';
import type { UnitSystem } from '../../units/index.ts';
import { useReason } from '../kit/ResultLine.tsx';

interface Props {
  label: string;
  /** Asked for while the fold is open. */
  working: () => Working;
  units: UnitSystem;
}

export function WhyThisNumber({ label, working, units }: Props) {
  const { isOpen, fold, Panel } = useReason();
  return (
    <details class="result" {...fold}>
      <summary aria-label={`why this number? ${label}`}>
        <span class="why">why this number?</span>
      </summary>
      {Panel && isOpen && <Panel working={working()} rule={undefined} units={units} />}
    </details>
  );
}

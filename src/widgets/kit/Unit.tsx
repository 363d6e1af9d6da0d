/** The unit of a number field: seen beside it, and heard in its name. */
import { fieldUnit, type Kind, spokenUnit, type UnitSystem } from '../../units/index.ts';

interface UnitProps {
  kind: Kind;
  /**
   * Units of the number in the field. Left out for a field that is empty at first: then both are written, and the style
   * sheet shows the reader's.
   */
  system?: UnitSystem;
}

/** For the end of a label: the unit in words, for the ear alone. */
export const HeardUnit = ({ kind, system }: UnitProps) => (
  <InUnits
    name="heard"
    system={system}
    text={(one) => spokenUnit(kind, one) && `in ${spokenUnit(kind, one)}`}
  />
);

/** Beside the field, as it is written. */
export const Unit = ({ kind, system }: UnitProps) => (
  <InUnits name="unit" system={system} text={(one) => fieldUnit(kind, one)} />
);

interface InUnitsProps {
  /** Class. */
  name: string;
  system: UnitSystem | undefined;
  text: (system: UnitSystem) => string;
}

function InUnits({ name, system, text }: InUnitsProps) {
  const [mm, inch] = [text('mm'), text('inch')];
  if (system || mm === inch) return <span class={name}>{text(system ?? 'mm')}</span>;
  return (
    <>
      <span class={`${name} mm`}>{mm}</span>
      <span class={`${name} inch`}>{inch}</span>
    </>
  );
}

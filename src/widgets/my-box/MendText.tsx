/** A change in words: "wood above the lid groove: 5/32 → 3/16 in". */
import { printOf } from '../../box/core/field.ts';
import { fields } from '../../box/subjects/inputs.ts';
import { Quantity } from '../../figures/parts/Quantity.tsx';
import { ArrowBetween } from './Arrow.tsx';
import { labelOf, type Mend } from './mend.ts';

function Value({ mend: { input }, value }: { mend: Mend; value: number | string }) {
  const field = fields[input];
  if (field.type === 'number')
    return <Quantity value={value as number} kind={field.kind} {...printOf(field)} />;
  return <>{field.type === 'choice' ? (field.options as Record<string, string>)[value] : value}</>;
}

/** @param brief only where it goes: "→ 3/16 in"; the rest is for the ear */
export function MendText({ mend, brief }: { mend: Mend; brief?: boolean }) {
  const is = brief ? 'heard' : undefined;
  return (
    <>
      <span class={is}>
        {labelOf(mend)}: <Value mend={mend} value={mend.from} />{' '}
      </span>
      <ArrowBetween /> <span class="heard">to </span>
      <Value mend={mend} value={mend.to} />
    </>
  );
}

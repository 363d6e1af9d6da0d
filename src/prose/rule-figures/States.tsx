/** The states of a rule's figure side by side, each with its words. */
import type { State } from './figure-of.tsx';

export const States = ({ states }: { states: readonly State[] }) => (
  <div class={`rule-figure states-${states.length}`}>
    {states.map(({ drawn, says }, at) => (
      <figure key={at}>
        {drawn}
        <figcaption>{says}</figcaption>
      </figure>
    ))}
  </div>
);

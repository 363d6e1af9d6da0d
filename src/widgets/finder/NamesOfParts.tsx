/** The names of the parts, each with how many rules or troubles it has and how many of them want a look: round the drawing, or in rows. */
import type { LabelPlace } from '../../figures/box/label-places.ts';
import { useLead } from '../kit/use-lead.ts';
import { CountMark } from '../verdicts/Mark.tsx';
import { countOf, linesAbout, type PartOfRules, type RuleLine } from './rule-lines.ts';

interface Props {
  /** What is counted. */
  of: 'rule' | 'trouble';
  parts: readonly PartOfRules[];
  places: readonly LabelPlace[];
  /** Anchor of the chosen part. */
  chosen: string;
  lines: readonly RuleLine[];
  onPart: (anchor: string) => void;
}

export function NamesOfParts({ of, parts, places, chosen, lines, onPart }: Props) {
  const lead = useLead();
  return (
    <nav class="named-parts" aria-label="Parts of the box">
      <ul>
        {parts.map((part) => {
          const { anchor, name, drawn } = part;
          const own = linesAbout(lines, part);
          const place = places.find((one) => one.part === drawn);
          return (
            <li
              key={anchor}
              class={`${place?.side ?? ''} ${anchor === chosen ? 'chosen' : ''}`}
              style={place && { '--top': `${Math.round(place.top)}px` }}
            >
              <a
                href={`#${anchor}`}
                aria-current={anchor === chosen ? 'true' : undefined}
                onClick={(event) => {
                  event.preventDefault();
                  onPart(anchor);
                  // Keys go on in the list, which stands elsewhere in the page.
                  lead(() => {
                    const heading = document.getElementById(`rules-${anchor}`);
                    heading?.focus({ preventScroll: true });
                    heading?.scrollIntoView({ block: 'nearest' });
                    return undefined;
                  });
                }}
              >
                {name}
              </a>
              <span class="rule-count">{own.length === 1 ? `1 ${of}` : `${own.length} ${of}s`}</span>{' '}
              <CountMark count={countOf(own)} />
            </li>
          );
        })}
      </ul>
    </nav>
  );
}

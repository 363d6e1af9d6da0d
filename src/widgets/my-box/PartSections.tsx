/**
 * Without JavaScript: every part of the example in a section of its own, with its inputs and what the rules say, then its
 * cut list and three views.
 */
import { designBox } from '../../box/design/design.ts';
import { exampleBox } from '../../box/subjects/example.ts';
import { verdicts } from '../../box/whole/index.ts';
import { Views } from '../../figures/views/Views.tsx';
import { worstFirst } from '../kit/told.tsx';
import { VerdictLine } from '../kit/VerdictLine.tsx';
import { PartFacts } from './PartFacts.tsx';
import { PartSize } from './PartSize.tsx';
import { PartsTable } from './PartsTable.tsx';
import { partOfCheck } from './part-of-check.ts';
import { nameOfPart, partsOfBench } from './parts.ts';

const design = designBox(exampleBox);
const { values } = design;
const judged = verdicts(values).sort(worstFirst);

export const PartSections = () => (
  <>
    {partsOfBench.map((part) => (
      <section key={part} id={part}>
        <h2>{nameOfPart[part]}</h2>
        <p>
          <PartSize part={part} values={values} />
        </p>
        <PartFacts part={part} values={values} />
        <ul class="verdicts">
          {judged
            .filter(({ check }) => partOfCheck(check.id) === part)
            .map((verdict) => (
              <VerdictLine key={verdict.check.id} verdict={verdict} />
            ))}
        </ul>
      </section>
    ))}
    <section>
      <h2>cut list</h2>
      <PartsTable design={design} />
    </section>
    <section>
      <h2>three views</h2>
      <Views design={design} />
    </section>
  </>
);

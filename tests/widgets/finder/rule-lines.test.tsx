/** The index of rules: every rule can be reached, counts agree with lists, and a number is the one its own page shows. */
import { signal } from '@preact/signals';
import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { Subject } from '../../../src/box/core/subject.ts';
import { verdictsOf } from '../../../src/box/core/verdict.ts';
import { exampleBox } from '../../../src/box/subjects/example.ts';
import { compute, modelOf } from '../../../src/box/subjects/model.ts';
import { evaluate, subjects, type Values, verdicts } from '../../../src/box/whole/index.ts';
import { partsOfBox } from '../../../src/figures/box/parts-of-box.ts';
import { listedRules, partsOfRules, stagesOfRules } from '../../../src/prose/listed-rules.ts';
import { anchorOfPart, parts } from '../../../src/prose/rule-terms.ts';
import { stageDrawings } from '../../../src/prose/stage-drawings.ts';
import { RuleRows } from '../../../src/widgets/finder/RuleRows.tsx';
import {
  countOf,
  isWarning,
  type ListedRule,
  linesAbout,
  linesOf,
  type RuleLine,
} from '../../../src/widgets/finder/rule-lines.ts';
import type { Store } from '../../../src/widgets/kit/use-store.ts';
import { Answer } from '../../../src/widgets/rule/Answer.tsx';
import { anyBox } from '../../box/any-box.ts';
import { askContent } from '../ask/site-words.ts';

type Content = Parameters<typeof listedRules>[0];
const content = askContent.rules as unknown as Content;
const rules = listedRules(content);
const linesFor = (values: Values) => linesOf(rules, verdicts(values), values.accepted);

describe('every rule is reached', () => {
  test('from a part of the box, by the anchor its own page links to', () => {
    const reached = new Set(
      partsOfRules.flatMap((part) =>
        linesAbout(linesFor(evaluate(exampleBox)), part).map(({ rule }) => rule.id),
      ),
    );
    expect([...reached].sort()).toEqual(content.map(({ id }) => id).sort());
    expect(partsOfRules.map(({ anchor }) => anchor).sort()).toEqual(parts.map(anchorOfPart).sort());
  });

  test('from the stage of the work it stands in, once', () => {
    const listed = stagesOfRules(content).flatMap((stage) => stage.rules.map(({ id }) => id));
    expect(listed.sort()).toEqual(content.map(({ id }) => id).sort());
  });

  test('each stage with rules has a drawing, and each part of the drawing has a name', () => {
    for (const { stage } of stagesOfRules(content)) expect(stageDrawings[stage], stage).toBeDefined();
    expect(partsOfRules.flatMap(({ drawn }) => drawn ?? []).sort()).toEqual([...partsOfBox].sort());
  });
});

/** A rule about the lid; three checks of it say three things. */
const listed = (id: string): ListedRule => ({
  id,
  title: id,
  path: `rules/${id}/`,
  usual: { mm: '2 mm', inch: '1/16 in' },
  parts: ['lid'],
});
const says = (rule: string, id: string, state: string) =>
  ({
    check: { rule, id, kind: 'length', usual: [0, 2] },
    state,
    measured: 1,
    usual: [0, 2],
    because: '',
  }) as never;
const order = (lines: readonly RuleLine[]) => lines.map(({ rule }) => rule.id);

test('warnings stand on top, what breaks first; then what has a number; then the rest, each in the order of the work', () => {
  const some = ['silent', 'kept', 'unknown', 'look', 'kept-too', 'breaks'].map(listed);
  const lines = linesOf(
    some,
    [
      says('kept', 'kept', 'usual'),
      says('unknown', 'unknown', 'unknown'),
      says('look', 'look', 'unusual'),
      says('kept-too', 'kept-too', 'usual'),
      says('breaks', 'breaks-well', 'usual'),
      says('breaks', 'breaks-badly', 'breaks'),
    ],
    {},
  );
  expect(order(lines)).toEqual(['breaks', 'look', 'kept', 'kept-too', 'silent', 'unknown']);
  expect(countOf(lines)).toEqual({ breaks: 1, looks: 1 });
});

test('a rule with a reason noted against it is no warning, and says so', () => {
  const lines = linesOf([listed('kept'), listed('look')], [says('look', 'look', 'unusual')], {
    look: 'I like it',
  });
  expect(order(lines)).toEqual(['look', 'kept']);
  expect(lines.some(isWarning)).toBe(false);
  expect(renderToString(<RuleRows lines={lines} />)).toContain('for a reason of mine');
});

test('nine rules are in sight at once; of ten the last two are folded', () => {
  const drawn = (count: number) =>
    renderToString(
      <RuleRows
        lines={linesOf(
          Array.from({ length: count }, (_, at) => listed(`rule-${at}`)),
          [],
          {},
        )}
      />,
    );
  expect(drawn(9)).not.toContain('<details');
  expect(drawn(10)).toContain('2 more');
});

test('a rule without a number of the box shows its usual range, not bold', () => {
  const drawn = renderToString(<RuleRows lines={linesOf([listed('silent')], [], {})} />);
  expect(drawn).toContain('1/16 in');
  expect(drawn).not.toContain('<b>');
});

test('a trouble tells the first of its checks, unless another wants a look, and nothing where the box opens otherwise', () => {
  const trouble: ListedRule = {
    id: 'lid-jams',
    title: 'The lid sticks',
    path: 'troubles/lid-jams/',
    checks: ['first', 'second'],
    kind: 'sliding',
    parts: ['lid'],
  };
  const told = (states: [string, string], kind: 'sliding' | 'sawn') => {
    const all = [says('b', 'second', states[1]), says('a', 'first', states[0])];
    return linesOf([trouble], all, {}, kind)[0]!.verdict?.check.id;
  };
  expect(told(['usual', 'usual'], 'sliding')).toBe('first');
  expect(told(['usual', 'breaks'], 'sliding')).toBe('second');
  expect(told(['usual', 'usual'], 'sawn')).toBeUndefined();
});

/** Texts in an element of the drawn page, by unit; a text that is the same in both counts for both. */
function numbersIn(html: string, element: RegExp): readonly string[] {
  return [...html.matchAll(element)].map(([, inner]) => {
    const one = (unit: string) =>
      new RegExp(`<span class="number ${unit}">([^<]*)</span>`).exec(inner!)?.[1] ??
      /<span class="number">([^<]*)<\/span>/.exec(inner!)?.[1];
    return `${one('mm')} | ${one('inch')}`;
  });
}

test('for any box the bold number is one that the page of the rule shows large, and the counts are those of the lists', () => {
  const models = Object.values(subjects).map((subject) =>
    modelOf(subject as unknown as Subject<string, Values>),
  );
  let compared = 0;
  fc.assert(
    fc.property(anyBox, (box) => {
      const lines = linesFor(evaluate(box));
      const pages = new Map<string, string>();
      for (const model of models) {
        const values = compute(model.results, box);
        const store = { values: signal(values), units: signal('mm') } as unknown as Store;
        for (const verdict of verdictsOf(model.checks, values))
          pages.set(
            verdict.check.rule,
            (pages.get(verdict.check.rule) ?? '') +
              renderToString(<Answer verdict={verdict} store={store} model={model} />),
          );
      }
      for (const line of lines) {
        const [bold] = numbersIn(renderToString(<RuleRows lines={[line]} />), /<b>(.*?)<\/b>/g);
        if (!bold) continue;
        const page = pages.get(line.rule.id)!;
        expect(numbersIn(page, /<p class="answer-number">(.*?)<small>/g), line.rule.id).toContain(bold);
        compared++;
      }
      for (const part of partsOfRules) {
        const own = linesAbout(lines, part);
        const tags = renderToString(<RuleRows lines={own} />).match(/state-tag (unusual|breaks)/g) ?? [];
        const { breaks, looks } = countOf(own);
        expect(breaks + looks).toBe(tags.length);
      }
    }),
    { numRuns: 25 },
  );
  expect(compared).toBeGreaterThan(300);
});

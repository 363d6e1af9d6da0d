/** A learner's question, asked blind and followed from its answer: whether it finds one, a number, the reason and the limit. */
import { exampleFor } from '../../../src/box/subjects/example.ts';
import type { UnitSystem } from '../../../src/units/index.ts';
import { parse } from '../../../src/units/parse.ts';
import type { Entry } from '../../../src/widgets/ask/entry.ts';
import { searchOf } from '../../../src/widgets/ask/search.ts';
import { shownOf } from '../../../src/widgets/ask/shown.ts';
import { textsOf } from '../../../src/widgets/ask/texts.ts';
import { ACCEPTABLE, type Wanted } from './acceptable.ts';
import { LEARNERS } from './learners.ts';
import { askFile } from './site-words.ts';

/** What a walk can be judged by; undefined where the question does not ask for it. */
export interface Walk {
  readonly question: string;
  readonly who: string;
  /** The acceptable answer, or what stood first instead; with the number in its first line. */
  readonly answer: string;
  readonly line: string;
  /** Among the first three; or, where the pages have no answer, that Ask says so and shows near doors. */
  readonly found: boolean;
  readonly number: boolean | undefined;
  readonly reason: boolean | undefined;
  readonly limit: boolean | undefined;
}

const wants: Readonly<Record<Wanted, readonly ('number' | 'reason' | 'limit')[]>> = {
  number: ['number', 'reason', 'limit'],
  reason: ['reason', 'limit'],
  means: [],
  safe: ['reason'],
};

/** Pages that give the reason themselves: a tap on the title leads there. The others name a rule where they stand first. */
const reasons: ReadonlySet<Entry['kind']> = new Set(['rule', 'judged', 'lesson', 'trouble', 'hazard']);
/** Every rule has “When to break it”, every lesson its limits. */
const limits: ReadonlySet<Entry['kind']> = new Set(['rule', 'judged', 'lesson']);
const named = ({ rule, rules = [] }: Entry) => rule !== undefined || rules.length > 0;

const search = await searchOf(askFile, parse, exampleFor('mm'));
const usualOf = (slug: string) =>
  askFile.entries.find(({ kind, rule }) => kind === 'rule' && rule === slug)?.usual;

function lineOf(entry: Entry, system: UnitSystem): string {
  const { number, usual } = shownOf(entry, search.own(exampleFor(system)), usualOf);
  return number ? textsOf(number)[system] : (usual?.[system] ?? '');
}

export const walks = (system: UnitSystem): readonly Walk[] =>
  LEARNERS.map(([question, who]) => {
    const [asks, ...ids] = ACCEPTABLE[question]!;
    const { answers, nearest } = search.find(question, exampleFor(system), system);
    const first = answers[0];
    if (ids.length === 0) {
      const found = first ? first.kind === 'beyond' && named(first) : nearest.length > 0;
      const answer = first?.id ?? (found ? `says so; ${nearest[0]!.id}` : 'says so, no door');
      return {
        question,
        who,
        answer,
        line: '',
        found,
        number: undefined,
        reason: undefined,
        limit: undefined,
      };
    }
    const entry = answers.slice(0, 3).find(({ id }) => ids.includes(id));
    const judge = (what: 'number' | 'reason' | 'limit', holds: (one: Entry) => boolean) =>
      wants[asks].includes(what) ? entry !== undefined && holds(entry) : undefined;
    const full = (one: Entry) => one === first && named(one);
    return {
      question,
      who,
      answer: entry?.id ?? first?.id ?? 'nothing',
      line: entry ? lineOf(entry, system) : '',
      found: entry !== undefined,
      number: judge('number', (one) => lineOf(one, system) !== ''),
      reason: judge('reason', (one) => reasons.has(one.kind) || full(one)),
      limit: judge('limit', (one) => limits.has(one.kind) || full(one)),
    };
  });

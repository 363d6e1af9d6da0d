/** Rules, lessons, exercises, words and troubles as entries of the file that answers are found in. Pure: from what the content says. */

import { exercises } from '../exercises/index.ts';
import type { Marked } from '../figures/box/MarkedBox.tsx';
import type { AskFile, Entry } from '../widgets/ask/entry.ts';
import { type BeyondData, beyond, cautionEntries, type GlossaryData, word } from './ask-beside.ts';
import { type RuleCaution, textsOf } from './cautions.ts';
import { rulesBehind, type TroubleCauses } from './trouble-links.ts';

interface Of<Data> {
  readonly id: string;
  readonly data: Data;
}
interface RuleData {
  readonly title: string;
  readonly claim: string;
  readonly stage: string;
  readonly parts: readonly string[];
  readonly usual: { readonly mm: string; readonly inch: string };
  readonly ignored: string;
  readonly exception: string;
  readonly cautions: readonly RuleCaution[];
}
interface LessonData {
  readonly title: string;
  readonly question: string;
  readonly summary: string;
  readonly steps?:
    | readonly {
        readonly id: string;
        readonly ask: string;
      }[]
    | undefined;
}
interface TroubleData extends TroubleCauses {
  readonly title: string;
  readonly says: string;
  readonly asked: readonly string[];
  readonly checks: readonly string[];
  readonly kind?: Entry['onlyOf'];
  readonly part: string;
}

export interface AskContent {
  readonly rules: readonly Of<RuleData>[];
  readonly lessons: readonly Of<LessonData>[];
  readonly words: readonly Of<{ readonly same: readonly string[] }>[];
  readonly glossary: readonly Of<GlossaryData>[];
  readonly troubles: readonly Of<TroubleData>[];
  readonly asked: readonly Of<{ readonly asked: readonly string[] }>[];
  readonly beyond: readonly Of<BeyondData>[];
  /** Names of woods without a figure for movement. */
  readonly stillWoods: readonly string[];
}

/** What of the box a rule or a trouble is about, as far as it can be shown. */
const drawn: Readonly<Record<string, Marked['of']>> = {
  'whole box': 'box',
  walls: 'walls',
  corners: 'walls',
  grooves: 'walls',
  bottom: 'bottom',
  lid: 'lid',
  contents: 'inside',
};

const rule = ({ id, data }: Of<RuleData>): Entry => ({
  id: `rule:${id}`,
  kind: 'rule',
  title: data.title,
  path: `rules/${id}/`,
  says: data.claim,
  text: [data.stage, ...data.parts, data.ignored, data.exception, ...textsOf(data.cautions)].join(' | '),
  usual: data.usual,
  except: data.exception,
  rule: id,
  part: { of: drawn[data.parts[0]!] ?? 'box' },
});

function lesson({ id, data }: Of<LessonData>): Entry[] {
  const path = `lessons/${id}/`;
  return [
    {
      id: `lesson:${id}`,
      kind: 'lesson',
      title: data.title,
      path,
      says: data.question,
      asked: [`lesson on ${data.title}`],
      text: data.summary,
    },
    ...(data.steps ?? []).map(
      (step): Entry => ({
        id: `lesson:${id}.${step.id}`,
        kind: 'lesson',
        title: step.ask,
        path: `${path}#${step.id}`,
        says: `A step of the lesson ${data.title}.`,
      }),
    ),
  ];
}

const exercise = ({ id, title, about }: (typeof exercises)[number]): Entry => ({
  id: `exercise:${id}`,
  kind: 'exercise',
  title,
  path: `exercises/${id}/`,
  says: about,
  asked: [`exercise on ${title}`],
});

const trouble = ({ id, data }: Of<TroubleData>): Entry => ({
  id: `trouble:${id}`,
  kind: 'trouble',
  title: data.title,
  path: `troubles/${id}/`,
  says: data.says,
  asked: data.asked,
  check: data.checks[0],
  onlyOf: data.kind,
  rules: rulesBehind(data),
  part: { of: drawn[data.part] ?? 'box' },
});

export const askFileOf = ({
  rules,
  lessons,
  words,
  glossary,
  troubles,
  asked,
  beyond: unsaid,
  stillWoods,
}: AskContent): AskFile => ({
  words: Object.fromEntries(words.map(({ id, data }) => [id, data.same])),
  entries: [
    ...rules.map(rule),
    ...lessons.flatMap(lesson),
    ...exercises.map(exercise),
    ...glossary.map(word),
    ...troubles.map(trouble),
    ...cautionEntries,
    ...unsaid.map(beyond),
  ],
  asked: Object.fromEntries(asked.map(({ id, data }) => [id, data.asked])),
  stillWoods,
});

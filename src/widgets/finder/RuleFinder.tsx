/** Finds rules by words typed, by stage of the work, part of the box and evidence. */

import { useComputed, useSignal } from '@preact/signals';
import MiniSearch from 'minisearch';
import { useEffect, useId } from 'preact/hooks';
import { href } from '../kit/href.ts';

export interface RuleSummary {
  id: string;
  title: string;
  claim: string;
  stage: string;
  parts: string[];
  evidence: string[];
  usual: { mm: string; inch: string };
}

const unique = (words: string[]) => [...new Set(words)];

interface Props {
  rules: RuleSummary[];
  /** Address of the texts of the rules. */
  textsAt: string;
}

export default function RuleFinder({ rules, textsAt }: Props) {
  const typed = useSignal('');
  const stage = useSignal('');
  const part = useSignal('');
  const evidence = useSignal('');
  /** By rule. */
  const texts = useSignal<Readonly<Record<string, string>> | 'missing' | undefined>(undefined);
  useEffect(() => {
    fetch(textsAt)
      .then((answer) => (answer.ok ? answer.json() : Promise.reject(answer)))
      .then(
        (found: Readonly<Record<string, string>>) => {
          texts.value = found;
        },
        () => {
          texts.value = 'missing';
        },
      );
  }, [textsAt]);
  const index = useComputed(() => {
    const search = new MiniSearch<RuleSummary & { words: string }>({
      fields: ['title', 'claim', 'stage', 'words'],
      searchOptions: { boost: { title: 4, claim: 2 }, prefix: true, fuzzy: 0.2, combineWith: 'AND' },
    });
    const known = typeof texts.value === 'object' ? texts.value : {};
    search.addAll(rules.map((rule) => ({ ...rule, words: known[rule.id] ?? '' })));
    return search;
  });
  const found = useComputed(() => {
    const order = typed.value.trim()
      ? index.value.search(typed.value).map(({ id }) => id as string)
      : undefined;
    const listed = order ? order.map((id) => rules.find((rule) => rule.id === id)!) : rules;
    return listed.filter(
      (rule) =>
        (!stage.value || rule.stage === stage.value) &&
        (!part.value || rule.parts.includes(part.value)) &&
        (!evidence.value || rule.evidence.includes(evidence.value)),
    );
  });
  const id = useId();
  return (
    <>
      <search>
        <form class="finder" onSubmit={(event) => event.preventDefault()}>
          <p>
            <label for={id}>words</label>
            <input
              id={id}
              type="search"
              value={typed.value}
              onInput={(event) => {
                typed.value = event.currentTarget.value;
              }}
            />
          </p>
          <Picker
            label="stage of the work"
            options={unique(rules.map((rule) => rule.stage))}
            chosen={stage}
          />
          <Picker
            label="part of the box"
            options={unique(rules.flatMap((rule) => rule.parts))}
            chosen={part}
          />
          <Picker
            label="evidence"
            options={unique(rules.flatMap((rule) => rule.evidence))}
            chosen={evidence}
          />
          <p role="status" class="found">
            {found.value.length === 1 ? '1 rule' : `${found.value.length} rules`}
          </p>
        </form>
      </search>
      <ul class="rule-list">
        {found.value.map((rule) => (
          <li key={rule.id}>
            <a href={href(`rules/${rule.id}/`)}>{rule.title}</a>
            <p>{rule.claim}</p>
            <p class="meta">
              <span class="number mm">{rule.usual.mm}</span>
              <span class="number inch">{rule.usual.inch}</span> · {rule.stage} · {rule.evidence.join(', ')}
            </p>
          </li>
        ))}
      </ul>
      {texts.value === 'missing' && (
        <p class="message">The texts of the rules could not be fetched: titles and claims are searched.</p>
      )}
      {found.value.length === 0 && <p>No rule fits all of this. Clear one of the fields.</p>}
    </>
  );
}

function Picker({ label, options, chosen }: { label: string; options: string[]; chosen: { value: string } }) {
  const id = useId();
  return (
    <p>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={chosen.value}
        onChange={(event) => {
          chosen.value = event.currentTarget.value;
        }}
      >
        <option value="">any</option>
        {options.map((option) => (
          <option key={option} value={option}>
            {option}
          </option>
        ))}
      </select>
    </p>
  );
}

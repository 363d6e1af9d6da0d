/** One thing asked: a number to type or a statement to choose, checked by itself, and answered with the step that went wrong. */
import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';
import type { Asked, NumberAsked } from '../../exercises/core/exercise.ts';
import { judge } from '../../exercises/core/judge.ts';
import { keyText, nearness } from '../../exercises/core/written.ts';
import { fieldUnit, type UnitSystem } from '../../units/index.ts';
import { readNumber } from '../kit/read-number.ts';
import { HeardUnit, Unit } from '../kit/Unit.tsx';

interface Props {
  asked: Asked;
  system: UnitSystem;
  /** The step to begin again with when an answer is no usual slip. */
  begin: string;
  /** Told each answer that was judged. */
  tried?: (entry: string, said: string, right: boolean) => void;
}

interface Said {
  right: boolean;
  words: readonly string[];
}

function sayTo(asked: NumberAsked, value: number, system: UnitSystem, begin: string): Said {
  const found = judge(asked, value);
  if (found.is === 'right') return { right: true, words: [`Right. The key is ${keyText(asked, system)}.`] };
  if (found.is === 'off')
    return {
      right: false,
      words: [`Too ${found.too}, and none of the usual slips. Begin again here: ${begin}`],
    };
  const says = [...new Set(found.mistakes.map((one) => one.says))];
  return { right: false, words: says.length > 1 ? ['One of these steps went wrong.', ...says] : says };
}

export function AskedField({ asked, system, begin, tried }: Props) {
  const id = useId();
  const text = useSignal('');
  const said = useSignal<Said | undefined>(undefined);

  const tell = (entry: string, found: Said) => {
    said.value = found;
    tried?.(entry, found.words.join(' '), found.right);
  };
  const check = async (event: Event) => {
    event.preventDefault();
    if (asked.type === 'pick') {
      const picked = asked.options.find((one) => one.id === text.value);
      if (!picked) said.value = { right: false, words: ['Choose one of them.'] };
      else if (picked.id === asked.key) tell(picked.text, { right: true, words: ['Right.'] });
      else tell(picked.text, { right: false, words: [picked.says ?? ''] });
      return;
    }
    const entry = text.value;
    const parsed = await readNumber(entry, asked.print.kind, system);
    // What cannot be read is no try.
    if (!parsed.ok) said.value = { right: false, words: [parsed.message] };
    else {
      const unit = /^[\d\s.,/+-]+$/.test(entry) ? ` ${fieldUnit(asked.print.kind, system)}` : '';
      tell((entry.trim() + unit).trim(), sayTo(asked, parsed.value, system, begin));
    }
  };
  const answer = (
    <div id={`${id}m`} role="status" class={said.value?.right ? 'right' : 'slip'}>
      {said.value?.words.map((words) => (
        <p key={words}>{words}</p>
      ))}
    </div>
  );
  if (asked.type === 'pick')
    return (
      <form class="asked" onSubmit={check}>
        <fieldset aria-describedby={`${id}m`}>
          <legend>{asked.label}</legend>
          {asked.options.map((option) => (
            <label key={option.id}>
              <input
                type="radio"
                name={id}
                onChange={() => {
                  text.value = option.id;
                }}
              />{' '}
              {option.text}
            </label>
          ))}
        </fieldset>
        <button type="submit">check</button>
        {answer}
      </form>
    );
  const near = nearness(asked, system);
  return (
    <form class="asked" onSubmit={check}>
      <label for={id}>
        {asked.label}
        <HeardUnit kind={asked.print.kind} system={system} />
      </label>
      <p class="typed">
        <input
          id={id}
          type="text"
          inputMode={system === 'mm' ? 'decimal' : 'text'}
          autocomplete="off"
          value={text.value}
          aria-describedby={`${id}m`}
          onInput={(event) => {
            text.value = event.currentTarget.value;
          }}
        />
        <Unit kind={asked.print.kind} system={system} />
        <button type="submit">check</button>
        {near && <span class="nearness">right within {near}</span>}
      </p>
      {answer}
    </form>
  );
}

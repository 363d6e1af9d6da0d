/** On the notebook's page: what is due today. Its schedule is fetched where anything was answered. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { answers, loadAnswers } from '../../notebook/recall/answers.ts';
import { fetchWords } from '../beside/words.ts';
import { useFetched } from './use-fetched.ts';

export function DueToday({ file }: { file: string }) {
  const awake = useSignal(false);
  useEffect(() => {
    loadAnswers();
    awake.value = true;
  }, []);
  const any = awake.value && Object.keys(answers.value).length > 0;
  const { found, ask } = useFetched(async () => {
    const [{ DueNow }, { questions }] = await Promise.all([
      import('../beside/late-recall.tsx'),
      fetchWords(file),
    ]);
    return { DueNow, questions };
  }, any);
  return (
    <section class="due" aria-labelledby="due">
      <h2 id="due">Due today</h2>
      {!any && (
        <p>No question was asked yet. Three stand at the head of each lesson, from the second one on.</p>
      )}
      {any && typeof found === 'object' && <found.DueNow questions={found.questions} />}
      {any && found === 'missing' && (
        <p role="status">
          What is due could not be fetched.{' '}
          <button type="button" class="quiet" onClick={ask}>
            try again
          </button>
        </p>
      )}
    </section>
  );
}

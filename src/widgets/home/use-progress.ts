/** What the reader has done of the course. In the first render it is nothing, as the page was built. */
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { lastLesson, loadProgress, progress } from '../../notebook/progress.ts';

export function useProgress() {
  const live = useSignal(false);
  useEffect(() => {
    loadProgress();
    live.value = true;
  }, []);
  return live.value
    ? { progress: progress.value, last: lastLesson.value }
    : { progress: {}, last: undefined };
}

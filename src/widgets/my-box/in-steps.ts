/** Works a little at a time, so that the page answers in between. */
import type { Steps } from '../../geometry/steps.ts';

/** So long it is worked without a pause, ms: a tenth of what a reader notices, on a slow phone a few times as long. */
const slice = 6;

/** @returns what gives up */
export function inSteps<Result>(steps: Steps<Result>, onDone: (result: Result) => void): () => void {
  let timer = setTimeout(work);
  function work() {
    const start = performance.now();
    while (performance.now() - start < slice) {
      const { done, value } = steps.next();
      if (done) return onDone(value);
    }
    timer = setTimeout(work);
    return undefined;
  }
  return () => clearTimeout(timer);
}

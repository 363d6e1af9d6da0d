/** Work that is done in small steps, so that whoever asks for it decides when to pause. */

export type Steps<Result> = Generator<void, Result, void>;

/** All steps without a pause. */
export function atOnce<Result>(steps: Steps<Result>): Result {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

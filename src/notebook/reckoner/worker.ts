/** The worker: answers one question after another. It is bundled by itself, and kept for use without a network like every file. */
import { answer, type Question } from './questions.ts';

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  postMessage(answer(data));
});

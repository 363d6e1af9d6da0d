/** The way into the course: to its first lesson, or to where the reader left off. */
import { type CourseLesson, placeIn } from '../../notebook/place.ts';
import { href } from '../kit/href.ts';
import { useProgress } from './use-progress.ts';

export interface Props {
  /** Every lesson in order; `asks` are the questions of its steps, where the way says them. */
  course: readonly (CourseLesson & { readonly asks?: readonly string[] })[];
  /** What the first lesson asks. */
  first: string;
  /** A line among others, or the button of a page. */
  as: 'line' | 'button';
}

export default function GoOn({ course, first, as }: Props) {
  const { progress, last } = useProgress();
  const place = placeIn(course, progress, last);
  const lesson = course[place?.lesson ?? 0]!;
  const step = place && lesson.steps[place.step];
  const to = href(`lessons/${lesson.id}/${step ? `#${step}` : ''}`);
  const where = place && `lesson ${place.lesson + 1}, question ${place.step + 1}`;
  if (as === 'line')
    return (
      <p class="way">
        <a href={to}>{where ? `Go on: ${where}` : `Begin: ${first}`}</a>
      </p>
    );
  return (
    <p>
      <a class="go-on" href={to}>
        <small>{where ? `Go on with ${where}` : 'Begin with lesson 1'}</small> {/* A space for the ear. */}
        <span>{(place && lesson.asks?.[place.step]) ?? first}</span>
      </a>
    </p>
  );
}

/** The tags a lesson or rule author may use. A lesson has no imports; a tag that is not here stops the build. */
import Because from './Because.astro';
import Caution from './Caution.astro';
import Cite from './Cite.astro';
import Contrast from './Contrast.astro';
import Guess from './Guess.astro';
import Lab from './Lab.astro';
import Limits from './Limits.astro';
import More from './More.astro';
import MyBoxPart from './MyBoxPart.astro';
import NewNumbers from './NewNumbers.astro';
import RuleCard from './RuleCard.astro';
import Size from './Size.astro';
import Step from './Step.astro';
import Word from './Word.astro';

export const tags = {
  Because,
  Caution,
  Cite,
  Contrast,
  Guess,
  Lab,
  Limits,
  More,
  MyBoxPart,
  NewNumbers,
  RuleCard,
  Size,
  Step,
  Word,
};

/** The rules of this subject, for the reader's box. */
import { proportion } from '../../../box/subjects/proportion/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(proportion);

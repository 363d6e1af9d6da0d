/** The rules of this subject, for the reader's box. */
import { bottom } from '../../../box/subjects/bottom/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(bottom);

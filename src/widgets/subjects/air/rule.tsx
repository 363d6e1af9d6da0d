/** The rules of this subject, for the reader's box. */
import { air } from '../../../box/subjects/air/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(air);

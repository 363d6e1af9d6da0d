/** The rules of this subject, for the reader's box. */
import { joints } from '../../../box/subjects/joints/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(joints);

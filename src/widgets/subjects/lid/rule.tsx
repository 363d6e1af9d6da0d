/** The rules of this subject, for the reader's box. */
import { lid } from '../../../box/subjects/lid/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(lid);

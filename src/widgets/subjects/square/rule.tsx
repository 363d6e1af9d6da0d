/** The rules of this subject, for the reader's box. */
import { square } from '../../../box/subjects/square/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(square);

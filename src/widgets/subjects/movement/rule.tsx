/** The rules of this subject, for the reader's box. */
import { movement } from '../../../box/subjects/movement/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(movement);

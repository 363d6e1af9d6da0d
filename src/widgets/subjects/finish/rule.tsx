/** The rules of this subject, for the reader's box. */
import { finish } from '../../../box/subjects/finish/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(finish);

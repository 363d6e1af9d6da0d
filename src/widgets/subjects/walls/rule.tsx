/** The rules of this subject, for the reader's box. */
import { walls } from '../../../box/subjects/walls/subject.ts';
import { ruleOf } from '../../rule/rule.tsx';

export default ruleOf(walls);

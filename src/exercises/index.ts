/** Every exercise: twelve in the order of the work, then one for each lesson that had none, in the order of the course. */

import type { Exercise } from './core/exercise.ts';
import { e1 } from './tasks/e1.ts';
import { e2 } from './tasks/e2.ts';
import { e3 } from './tasks/e3.ts';
import { e4 } from './tasks/e4.ts';
import { e5 } from './tasks/e5.ts';
import { e6 } from './tasks/e6.ts';
import { e7 } from './tasks/e7.ts';
import { e8 } from './tasks/e8.ts';
import { e9 } from './tasks/e9.ts';
import { e10 } from './tasks/e10.ts';
import { e11 } from './tasks/e11.ts';
import { e12 } from './tasks/e12.ts';
import { e13 } from './tasks/e13.ts';
import { e14 } from './tasks/e14.ts';
import { e15 } from './tasks/e15.ts';
import { e16 } from './tasks/e16.ts';
import { e17 } from './tasks/e17.ts';
import { e18 } from './tasks/e18.ts';
import { e19 } from './tasks/e19.ts';
import { e20 } from './tasks/e20.ts';
import { e21 } from './tasks/e21.ts';
import { e22 } from './tasks/e22.ts';
import { e23 } from './tasks/e23.ts';
import { e24 } from './tasks/e24.ts';
import { e25 } from './tasks/e25.ts';

export const exercises: readonly Exercise[] = [
  e1,
  e2,
  e3,
  e4,
  e5,
  e6,
  e7,
  e8,
  e9,
  e10,
  e11,
  e12,
  e13,
  e14,
  e15,
  e16,
  e17,
  e18,
  e19,
  e20,
  e21,
  e22,
  e23,
  e24,
  e25,
];

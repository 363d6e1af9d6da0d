/** The stages of the work that lessons are sorted by, in order, and where one stands then. A stage without a lesson is not shown. */
export const lessonStages = {
  'the size': 'on paper',
  'the wood': 'at the rack and in the shop',
  'the parts': 'on paper',
  'putting together': 'at the bench',
  'the years after': 'in use',
} as const;

export type LessonStage = keyof typeof lessonStages;

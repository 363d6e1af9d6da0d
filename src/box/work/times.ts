/** How long things take, with the status of each figure. */
export interface Time {
  readonly what: string;
  readonly takes: string;
  readonly known: string;
}

const guide = 'a glue maker’s guide¶';

/** Open time of ordinary white or yellow glue, minutes: common practice. */
export const openTime = { low: 4, high: 10 } as const;

export const times: readonly Time[] = [
  {
    what: 'wood in the room before it is cut',
    takes: 'until an offcut weighs the same twice, 3 days apart; about a week for thin stock',
    known: 'common practice',
  },
  {
    what: 'open time of white or yellow glue',
    takes: `${openTime.low} to ${openTime.high} minutes`,
    known: 'common practice; the label counts',
  },
  { what: 'in clamps', takes: '30 to 60 minutes', known: guide },
  { what: 'before the joint is loaded', takes: '24 hours', known: guide },
  {
    what: 'before joints are leveled',
    takes: '24 hours; 3 to 7 days for show work',
    known: 'common practice',
  },
  { what: 'between coats of finish', takes: 'as its label says', known: 'the label' },
];

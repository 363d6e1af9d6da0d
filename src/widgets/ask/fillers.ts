/** Words of a question that ask for nothing themselves. Where one belongs to a phrase that does, the phrase counts. */
export const fillers: ReadonlySet<string> = new Set(
  `a about actually all also am an and any anyone are around as at be been before being best better between both box but by
  came can cant come correct could cut cuts cutting d did do does doing done dont each else enough ever every exactly far few find for from
  get gets getting give go goes going good got had happen happens has have havent help her here how i id if ill im in into
  is isnt it its ive just keep know lesson let life like little ll look lot lots m make makes making many may me mean meaning means might more
  most much must my mine myself need needed needs never no not now of off often ok on once one only or other our ours out
  own please proper properly put re really right rule s same say see set shall should show since so some someone something
  still such t take tell than that the their them then there these they thing this those though to too try type up us use
  used using usual usually ve very want wanted was way we well were what whats when where whether which while who why will
  with wont work works would wrong yes yet you your`.split(/\s+/),
);

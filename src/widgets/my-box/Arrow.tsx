/** A small triangle that points one way, or an arrow from one number to another; the words beside it say what it does. */
const turned = { left: 180, right: 0, up: -90, down: 90 } as const;

export const Arrow = ({ to }: { to: keyof typeof turned }) => (
  <svg class="arrow" viewBox="-6 -6 12 12" width="12" height="12" aria-hidden="true">
    <path d="M-4 -5L5 0L-4 5Z" transform={`rotate(${turned[to]})`} />
  </svg>
);

export const ArrowBetween = () => (
  <svg class="arrow" viewBox="0 -5 18 10" width="18" height="10" aria-hidden="true">
    <path d="M1 -0.9H11V-4L17 0L11 4V0.9H1Z" />
  </svg>
);

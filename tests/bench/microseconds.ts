/** Microseconds of one call in the fastest of many rounds: other programs only add. Every call gets another wall, as a slider would. */
export function microseconds(work: (wall: number) => void): number {
  const calls = 40;
  const rounds = Array.from({ length: 100 }, () => {
    const start = performance.now();
    for (let call = 0; call < calls; call++) work(9 + call / calls);
    return ((performance.now() - start) * 1000) / calls;
  });
  return Math.min(...rounds);
}

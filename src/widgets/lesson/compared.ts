/** How a guess compares with the truth, in words: within a seventh is well judged, else how many times it was off. */
export function compared(mark: number, truth: number): string {
  if (!Number.isFinite(truth) || truth === 0 || mark * truth < 0) return '';
  if (mark === 0) return 'You expected nothing.';
  const times = truth / mark;
  if (times > 6 / 7 && times < 7 / 6) return 'Well judged.';
  const count = (many: number) =>
    many >= 10
      ? 'more than ten times'
      : many >= 2.5
        ? `about ${Math.round(many)} times`
        : many >= 1.6
          ? 'about twice'
          : '';
  if (times > 1)
    return count(times) ? `That is ${count(times)} your mark.` : 'That is somewhat more than your mark.';
  return count(1 / times) ? `Your mark was ${count(1 / times)} that.` : 'Your mark was somewhat more.';
}

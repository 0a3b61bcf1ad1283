// Lays visits along a line on which long gaps, such as winters, are folded to a fixed width.

const DAY = 86_400_000;
const LONGEST_GAP = 75;
const FOLDED = 18;

/**
 * @param times milliseconds, rising
 * @returns {place(time): days along the folded line, folds: [{from, to}] in those days, end}
 */
export function fold(times) {
  const knots = [{ time: times[0], at: 0 }];
  const folds = [];
  for (let i = 1; i < times.length; i++) {
    const gap = (times[i] - times[i - 1]) / DAY;
    const before = knots[knots.length - 1];
    const width = gap > LONGEST_GAP ? FOLDED : gap;
    if (gap > LONGEST_GAP) folds.push({ from: before.at, to: before.at + width });
    knots.push({ time: times[i], at: before.at + width });
  }
  const place = time => {
    const after = knots.findIndex(knot => knot.time >= time);
    if (after <= 0) return after === 0 ? knots[0].at : knots[knots.length - 1].at;
    const [a, b] = [knots[after - 1], knots[after]];
    return b.time === a.time ? b.at : a.at + (b.at - a.at) * (time - a.time) / (b.time - a.time);
  };
  return { place, folds, end: knots[knots.length - 1].at };
}

// Small Chart.js plugins of our own: bars of uncertainty, expected bands, limits, work done, folded gaps.

const settings = chart => chart.options.plugins.marks;

function line(context, x1, y1, x2, y2) {
  context.beginPath();
  context.moveTo(x1, y1);
  context.lineTo(x2, y2);
  context.stroke();
}

/** Expected ± two standard uncertainties behind each reading. */
export const bands = {
  id: 'bands',
  beforeDatasetsDraw(chart) {
    const { ctx, scales: { x, y } } = chart;
    ctx.save();
    for (const point of chart.data.datasets[0].data) {
      if (!point.band) continue;
      const [top, bottom] = [y.getPixelForValue(point.band.high), y.getPixelForValue(point.band.low)];
      ctx.fillStyle = settings(chart).band;
      ctx.fillRect(x.getPixelForValue(point.x) - 9, top, 18, bottom - top);
      ctx.strokeStyle = settings(chart).blue;
      ctx.lineWidth = 2;
      const middle = (top + bottom) / 2;
      line(ctx, x.getPixelForValue(point.x) - 9, middle, x.getPixelForValue(point.x) + 9, middle);
    }
    ctx.restore();
  },
};

/** A bar of ± two standard uncertainties through each point. */
export const errorBars = {
  id: 'errorBars',
  beforeDatasetsDraw(chart) {
    const { ctx, scales: { x, y } } = chart;
    ctx.save();
    ctx.strokeStyle = settings(chart).blue;
    ctx.lineWidth = 2.5;
    for (const point of chart.data.datasets[0].data) {
      if (!point.bar) continue;
      const [at, top, bottom] = [x.getPixelForValue(point.x), y.getPixelForValue(point.bar.high), y.getPixelForValue(point.bar.low)];
      line(ctx, at, top, at, bottom);
      line(ctx, at - 4, top, at + 4, top);
      line(ctx, at - 4, bottom, at + 4, bottom);
    }
    ctx.restore();
  },
};

/** The line of "as expected" and dashed ones at the limit on either side. */
export const limits = {
  id: 'limits',
  beforeDatasetsDraw(chart) {
    const { limit, ink, soft } = settings(chart);
    if (limit === undefined) return;
    const { ctx, chartArea: { left, right }, scales: { y } } = chart;
    ctx.save();
    ctx.strokeStyle = ink;
    ctx.lineWidth = 1.5;
    line(ctx, left, y.getPixelForValue(0), right, y.getPixelForValue(0));
    ctx.strokeStyle = soft;
    ctx.setLineDash([7, 5]);
    for (const value of [-limit, limit]) line(ctx, left, y.getPixelForValue(value), right, y.getPixelForValue(value));
    ctx.restore();
  },
};

/** An upright line with its words for each piece of work done. */
export const workMarks = {
  id: 'workMarks',
  beforeDatasetsDraw(chart) {
    const { work, ink, soft } = settings(chart);
    const { ctx, chartArea: { top, bottom }, scales: { x } } = chart;
    ctx.save();
    ctx.strokeStyle = soft;
    ctx.fillStyle = ink;
    ctx.lineWidth = 1.5;
    ctx.font = '13px system-ui, sans-serif';
    for (const { x: at, text } of work) {
      const pixel = x.getPixelForValue(at) + 3;
      line(ctx, pixel, top, pixel, bottom);
      ctx.save();
      ctx.translate(pixel + 4, top + 2);
      ctx.rotate(Math.PI / 2);
      ctx.fillText(text, 0, 0);
      ctx.restore();
    }
    ctx.restore();
  },
};

/** Two slanting strokes on the time line where a long gap is folded. */
export const foldMarks = {
  id: 'foldMarks',
  afterDraw(chart) {
    const { folds, ink } = settings(chart);
    const { ctx, chartArea: { bottom }, scales: { x } } = chart;
    ctx.save();
    ctx.strokeStyle = ink;
    ctx.lineWidth = 2;
    for (const { from, to } of folds) {
      const middle = x.getPixelForValue((from + to) / 2);
      line(ctx, middle - 6, bottom + 6, middle - 1, bottom - 6);
      line(ctx, middle + 1, bottom + 6, middle + 6, bottom - 6);
    }
    ctx.restore();
  },
};

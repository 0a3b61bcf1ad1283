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

/** What the whole history makes of the unit, from visit to visit. */
export const beliefs = {
  id: 'beliefs',
  beforeDatasetsDraw(chart) {
    const { ctx, chartArea, scales: { x, y } } = chart;
    const points = chart.data.datasets[0].data.filter(point => point.belief);
    if (points.length < 2) return;
    const kept = value => Math.max(chartArea.top, Math.min(chartArea.bottom, y.getPixelForValue(value)));
    ctx.save();
    ctx.fillStyle = settings(chart).band;
    ctx.beginPath();
    points.forEach(point => ctx.lineTo(x.getPixelForValue(point.x), kept(point.belief.high)));
    [...points].reverse().forEach(point => ctx.lineTo(x.getPixelForValue(point.x), kept(point.belief.low)));
    ctx.closePath();
    ctx.fill();
    ctx.restore();
  },
};

/** What lies ahead if nothing is done: a fan between the courses of which one in ten runs beyond, with the one in the middle. */
export const fans = {
  id: 'fans',
  beforeDatasetsDraw(chart) {
    const { fan, band, blue } = settings(chart);
    const { ctx, chartArea, scales: { x, y } } = chart;
    if (!fan || fan.length < 2) return;
    const kept = value => Math.max(chartArea.top, Math.min(chartArea.bottom, y.getPixelForValue(value)));
    const course = name => fan.map(day => [x.getPixelForValue(day.x), kept(day[name])]);
    const along = points => points.forEach(([across, up]) => ctx.lineTo(across, up));
    ctx.save();
    ctx.fillStyle = band;
    ctx.globalAlpha = 0.6;
    ctx.beginPath();
    along(course('high'));
    along(course('low').reverse());
    ctx.fill();
    ctx.globalAlpha = 1;
    ctx.strokeStyle = blue;
    for (const [name, width] of [['low', 1], ['middle', 2.5], ['high', 1]]) {
      ctx.lineWidth = width;
      ctx.beginPath();
      along(course(name));
      ctx.stroke();
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
      const at = x.getPixelForValue(point.x);
      const ends = [point.bar.high, point.bar.low].map(value => y.getPixelForValue(value));
      const kept = ends.map(end => Math.max(y.top, Math.min(y.bottom, end)));
      line(ctx, at, kept[0], at, kept[1]);
      ends.forEach(end => { if (end >= y.top && end <= y.bottom) line(ctx, at - 4, end, at + 4, end); });
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

const WORDS = '14px system-ui, sans-serif';
const ROW = 18;
const MOST_ROWS = 3;

/** How many rows the words of the work done may need above the chart. */
export const rowsOf = work => Math.max(1, Math.min(MOST_ROWS, work.length));

/** Where each text begins: in the first row with room, kept within the chart. */
function placeWords(ctx, work, x, left, right) {
  const ends = Array(MOST_ROWS).fill(-Infinity);
  return work.map(({ x: at, text }) => {
    const pixel = x.getPixelForValue(at);
    const width = ctx.measureText(text).width;
    const from = Math.max(left, Math.min(pixel - 2, right - width));
    const row = Math.max(0, ends.findIndex(end => end + 10 < from));
    ends[row] = from + width;
    return { pixel, from, row, text };
  });
}

/** An upright line for each piece of work done; its words above the chart that is asked to name them. */
export const workMarks = {
  id: 'workMarks',
  beforeDatasetsDraw(chart) {
    const { work, named, ink, soft } = settings(chart);
    const { ctx, chartArea: { top, bottom, left, right }, scales: { x } } = chart;
    ctx.save();
    ctx.strokeStyle = soft;
    ctx.fillStyle = ink;
    ctx.lineWidth = 1.5;
    ctx.font = WORDS;
    for (const { pixel, from, row, text } of placeWords(ctx, work, x, left, right)) {
      line(ctx, pixel, named ? top - row * ROW - 4 : top, pixel, bottom);
      if (named) ctx.fillText(text, from, top - row * ROW - 6);
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

// The chart over the seasons: split and amps, one above the other, each visit with its bar.

import { byId } from '../shared/dom.js';
import { asideText, dayText, wallTime } from '../shared/words.js';
import { bands, beliefs, errorBars, fans, foldMarks, limits, rowsOf, workMarks } from './chart-marks.js';
import { fold } from './time-fold.js';
import { workText } from './visit-table.js';

const charts = {};
const LIMIT = 10;

const colour = name => getComputedStyle(document.documentElement).getPropertyValue(`--${name}`).trim();

/** What one quantity's chart shows of each visit. */
function points(visits, name, view, place) {
  return visits.filter(row => row.counts && row[name]?.measured && (view === 'raw' || row[name].departure)).map(row => {
    const judged = row[name];
    const x = place(wallTime(row.at));
    const common = { x, row, judged };
    if (view === 'raw') {
      const band = judged.expected ? { low: judged.expected.number - judged.expanded.number, high: judged.expected.number + judged.expanded.number } : undefined;
      return { ...common, y: judged.measured.number, band };
    }
    return { ...common, y: judged.departure.percent, bar: { low: judged.departure.low_percent, high: judged.departure.high_percent },
      belief: row[`${name}_band`] && { low: row[`${name}_band`].low_percent, high: row[`${name}_band`].high_percent } };
  });
}

function tickLabels(visits, folded) {
  const ticks = [];
  for (const row of visits) {
    const at = folded.place(wallTime(row.at));
    const year = row.at.slice(0, 4);
    const last = ticks[ticks.length - 1];
    if (!last || last.year !== year) ticks.push({ value: at, year, label: year });
  }
  return ticks;
}

/** Room for every point and its bar, but not for bars so long that they would flatten the rest. */
function reach(data, view, fan) {
  const ends = fan.flatMap(({ low, high }) => [low, high]).concat(data.flatMap(({ y, bar, band }) => [y, (bar ?? band ?? { low: y }).low, (bar ?? band ?? { high: y }).high]));
  if (view === 'raw') {
    return { min: Math.floor(Math.min(...ends)), max: Math.ceil(Math.max(...ends)) };
  }
  const furthest = Math.max(...data.map(({ y }) => Math.abs(y)), 0);
  const whole = Math.min(Math.max(...ends.map(Math.abs), 15), Math.max(40, furthest + 10));
  return { min: -Math.ceil(whole / 5) * 5, max: Math.ceil(whole / 5) * 5 };
}

function axes(visits, folded, view, unit, data, fan) {
  const ticks = tickLabels(visits, folded);
  const margin = Math.max(2, folded.end * 0.03);
  return {
    x: { type: 'linear', min: -margin, max: folded.end + margin, grid: { color: colour('rule') }, border: { color: colour('edge') },
      afterBuildTicks: axis => { axis.ticks = ticks.map(({ value }) => ({ value })); },
      ticks: { color: colour('soft'), callback: value => ticks.find(tick => tick.value === value)?.label, maxRotation: 0, align: 'start', autoSkip: false,
        font: { size: 14 } } },
    y: { grid: { color: colour('rule') }, border: { color: colour('edge') }, ...reach(data, view, fan), afterFit: axis => { axis.width = 62; },
      ticks: { color: colour('soft'), font: { size: 14 }, callback: value => (view === 'raw' ? `${Number(value.toFixed(1))} ${unit}` : `${value > 0 ? '+' : ''}${value} %`) } },
  };
}

function tooltipLines({ raw }) {
  const lines = [raw.judged.text];
  if (raw.judged.departure) lines.push(asideText(raw.judged.departure.percent) + (raw.judged.departure.percent ? ' expected' : ''));
  if (raw.row.work.length) lines.push(workText(raw.row.work));
  return lines;
}

function draw(name, visits, view, choose, named, ahead) {
  charts[name]?.destroy();
  const counted = visits.filter(row => row.counts);
  const days = view === 'raw' ? [] : ahead.map(({ on, [name]: spread }) => ({ at: on, ...spread })).filter(({ at }) => !counted.length || at > counted.at(-1).at.slice(0, 10));
  const dated = [...counted, ...days];
  const folded = fold(dated.map(row => wallTime(row.at)));
  const fan = days.map(({ at, low, middle, high }) => ({ x: folded.place(wallTime(at)), low, middle, high }));
  const data = points(visits, name, view, folded.place);
  const unit = data[0]?.judged.measured.unit ?? '';
  const work = counted.filter(row => row.work.length).map(row => ({ x: folded.place(wallTime(row.at)), text: workText(row.work) }));
  const ink = colour('ink');
  charts[name] = new window.Chart(byId(`${name}-chart`), {
    type: 'scatter',
    data: { datasets: [{ data, pointRadius: 6, pointHoverRadius: 8, pointHitRadius: 24, pointBorderColor: ink, pointBorderWidth: 2,
      pointBackgroundColor: data.map(point => (point.row.state === 'retake' ? 'transparent' : ink)) }] },
    options: { animation: false, clip: false, layout: { padding: { top: named ? 18 * rowsOf(work) : 4, right: 8 } }, maintainAspectRatio: false, responsive: true, scales: axes(dated, folded, view, unit, data, fan),
      onClick: (event, hit) => { if (hit.length) choose(data[hit[0].index].row.id); },
      plugins: { legend: { display: false }, tooltip: { titleFont: { size: 15 }, bodyFont: { size: 15 }, displayColors: false,
        callbacks: { title: items => dayText(items[0].raw.row.at), label: tooltipLines } },
      marks: { ink, blue: colour('blue'), soft: colour('soft'), rule: colour('rule'), band: colour('band'), limit: view === 'raw' ? undefined : LIMIT,
        work, named, folds: folded.folds, fan } } },
    plugins: [fans, bands, beliefs, foldMarks, limits, workMarks, errorBars],
  });
  byId(`${name}-chart`).setAttribute('aria-label', `${byId(`${name}-caption`).textContent}: ${data.length} visits, last `
    + `${data.length ? data[data.length - 1].judged.text : 'none'}. The same numbers are in the table of visits below.`);
  return data.length;
}

/** Draws both charts; `choose` is called with the id of a visit that is pressed. */
export function drawHistory(page, view, choose, ahead) {
  const raw = view === 'raw';
  byId('split-caption').textContent = raw ? 'Split as read, with what was expected' : 'Split against expected';
  byId('amps-caption').textContent = raw ? 'Amps as read, with what was expected' : 'Amps against expected';
  byId('chart-note').textContent = (raw ? 'Shaded: what this unit, clean and sound, should have shown in that weather, ± two standard uncertainties. '
    : 'Each point is a visit with its bar of ± two standard uncertainties (about 95 %). Shaded: what the whole history up to then makes of the unit. Dashed: 10 % off; what a visit means is decided by the whole history, not by this line. ')
    + (ahead.length && !raw ? 'On the right, between thin lines: what lies ahead if nothing is done; the middle line is as likely to be passed as not, one course in ten runs beyond either edge. ' : '')
    + 'Hollow: a retake. Upright lines: work done after that visit. Long gaps are folded. Press a point for its visit.';
  const anySplit = draw('split', page.visits, view, choose, true, ahead) > 0;
  byId('split-chart').closest('figure').hidden = !anySplit;
  byId('amps-figure').hidden = draw('amps', page.visits, view, choose, !anySplit, ahead) === 0;
}

matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => document.dispatchEvent(new CustomEvent('units-chosen')));

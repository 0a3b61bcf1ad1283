// How ready each depot is for the season, and what became of the acts so far.

import { byId, element, fill, named, terms } from '../shared/dom.js';
import { get } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { count, dayText } from '../shared/words.js';

const percent = ({ checked, units }) => (units ? Math.floor((100 * checked) / units) : 0);

function season({ opens, closes }) {
  if (opens) return `season opens ${dayText(opens)}`;
  return closes ? `season until ${dayText(closes)}` : '';
}

const yard = (depot, query) => `../yard/?${new URLSearchParams({ ...query, ...(depot ? { depot } : {}) })}`;

function figure(name, number, depot, query) {
  return element('td', { class: 'figure', 'data-name': name }, number && query ? element('a', { href: yard(depot, query), 'aria-label': `${number} ${name}${depot ? `, ${depot}` : ''}` }, String(number)) : String(number));
}

function readyBy(depot) {
  if (!depot.units) return '–';
  if (!depot.left) return 'all checked';
  return depot.ready_on ? dayText(depot.ready_on) : 'no pace';
}

function cost(depot) {
  if (!depot.works) return 'none planned';
  const unpriced = depot.works_without_price ? `${count(depot.works_without_price, 'work', 'works')} without a price` : '';
  return [depot.planned.map(({ text }) => text).join(' + '), unpriced].filter(Boolean).join(', ');
}

const NAMES = ['units in service', 'checked', 'left', 'ready at this pace', 'act', 'overdue', 'filter past its interval', 'warranty ends soon', 'out of service', 'planned work'];

function row(depot, sum = false) {
  const name = sum ? '' : depot.depot;
  const share = element('span', { class: 'share', 'aria-hidden': 'true' }, element('span', { style: undefined }));
  share.firstChild.style.width = `${percent(depot)}%`;
  return element('tr', { class: sum ? 'sum' : undefined }, element('th', { scope: 'row' }, sum ? 'all depots' : depot.depot ? named(depot.depot) : 'no depot',
    season(depot) ? element('span', { class: 'where hint' }, season(depot)) : ''),
  figure(NAMES[0], depot.units, name, {}), element('td', { class: 'figure', 'data-name': NAMES[1] }, `${percent(depot)} %`, share),
  figure(NAMES[2], depot.left, name, { seen: 'unvisited' }), element('td', { class: 'figure', 'data-name': NAMES[3] }, readyBy(depot)),
  figure(NAMES[4], depot.act, name, { state: 'act' }), figure(NAMES[5], depot.overdue, name, { due: 'overdue' }),
  figure(NAMES[6], depot.filters, name, { filter: 'overdue' }), figure(NAMES[7], depot.warranties, name, { warranty: 'ending' }),
  figure(NAMES[8], depot.out_of_service, name, { duty: 'out_of_service' }), element('td', { class: 'figure', 'data-name': NAMES[9] }, cost(depot)));
}

const SUMS = ['units', 'checked', 'left', 'lately', 'act', 'overdue', 'filters', 'warranties', 'out_of_service', 'works', 'works_without_price'];

function together(depots) {
  return Object.fromEntries(SUMS.map(name => [name, depots.reduce((sum, depot) => sum + depot[name], 0)]));
}

function show({ today, depots }) {
  if (!depots.length) {
    fill(byId('about'), 'No units yet. ', element('a', { href: '../yard/' }, 'Begin in the yard'), '.');
    return;
  }
  const all = together(depots);
  fill(byId('about'), `${all.checked} of ${count(all.units, 'unit', 'units')} in service ${all.checked === 1 ? 'is' : 'are'} checked for the season, ${all.left} left.`);
  const table = element('table', { class: 'season' },
    element('thead', {}, element('tr', {}, element('th', { scope: 'col' }, 'Depot'), NAMES.map(name => element('th', { scope: 'col', class: 'figure' }, name)))),
    element('tbody', {}, depots.map(depot => row(depot))));
  const note = element('p', { class: 'quiet' }, `On ${dayText(today)}. Checked: read and judged since sixty days before the season of its depot opens. Pace: what the last four weeks would bring if they went on; none where nothing was checked in them. Warranties that end within 120 days.`);
  fill(byId('ready'), note, element('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': 'Readiness by depot' }, table));
  get('season/history').then(showHistory).catch(refusal => sayFailure(byId('history-said'), refusal));
}

function rateText({ rate, known, went_away: away }) {
  if (!known) return 'No act has a known outcome yet.';
  if (!rate) return `${count(known, 'act has', 'acts have')} a known outcome: too few to say how often an act was a false alarm.`;
  return `${rate.percent} % of the acts with a known outcome were false alarms (${away} of ${known}); the true share lies between ${rate.low} and ${rate.high} %, at two standard deviations.`;
}

function showHistory(history) {
  byId('history').hidden = false;
  if (!history.acts && !history.misses) {
    fill(byId('history-said'), element('p', {}, 'No unit was ever called act, so there is nothing to tell yet.'));
    return;
  }
  fill(byId('history-said'), element('p', { class: 'sentence' }, rateText(history)),
    terms([['times a unit became act', history.acts], ['true: work was done, and the next reading no longer said act', history.confirmed],
      ['work was done, and the reading after it still said act', history.not_cured], ['went away without any work: a false alarm, or it went by itself', history.went_away],
      ['work was done, not read again yet', history.awaiting], ['nothing done yet', history.open],
      ['missed: compressor not running, and the reading before had said steady', history.misses],
      ['what these cost by your price lists: emergency and lost nights', history.misses_cost?.text]]),
    element('p', { class: 'quiet' }, 'By what was written down: work that nobody noted with a visit looks like a false alarm here. Read again after work, so that it can be told.'));
}

layFrame('season', { withUnits: false });
get('season').then(show).catch(refusal => sayFailure(byId('failure'), refusal));

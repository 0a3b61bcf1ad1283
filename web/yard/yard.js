// The yard: all units, most pressing first. The filter is in the address.

import { byId, element, fill, folded, named } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { count, dayText, monthText, placeNodes, stateClass, stateText } from '../shared/words.js';
import { showJudgedAgain } from './again.js';
import { layChoice, tickOf } from './choice.js';

const FILTERS = ['state', 'seen', 'due', 'filter', 'warranty', 'planned', 'duty', 'since', 'begun', 'older', 'depot', 'condition', 'text', 'order'];
const PLACE = ['after', 'after_unit', 'row'];
/** Of these one at a time is chosen by a sentence. */
const SENTENCES = ['state', 'seen', 'due', 'filter', 'warranty', 'planned', 'duty'];
/** These stay in sight on a phone. */
const FIRST_SENTENCES = ['act', 'drifting', 'retake', 'overdue', 'all'];
const NONE = Object.fromEntries([...SENTENCES, 'since'].map(name => [name, '']));
const DUTY = { out_of_service: 'out of service', sold: 'sold' };
const asked = new URLSearchParams(location.search);
const said = names => Object.fromEntries(names.map(name => [name, asked.get(name)]).filter(([, text]) => text));

/** Where there is room, what a phone folds away stands open. */
const roomy = matchMedia('(min-width: 30.01rem)');

function unfold() {
  byId('narrowing').open = roomy.matches || ['text', 'depot', 'order'].some(name => asked.get(name));
  byId('in-order').open = roomy.matches;
}

/** This page's address with some parts of the filter changed; the list starts anew. */
function address(changes) {
  const next = new URLSearchParams();
  for (const [name, text] of Object.entries({ ...said(FILTERS), ...changes })) if (text) next.set(name, text);
  return next.size ? `?${next}` : './';
}

const SENTENCE = { never_judged: 'not judged yet', retake: 'to retake', unvisited: 'not checked this season', overdue: 'overdue',
  filters: 'with a filter past its interval', warranty: 'whose warranty ends soon', planned: 'with work planned', out_of_service: 'out of service', sold: 'sold' };

function sentenceText({ key, count: number }, since) {
  if (key === 'all') return `${count(number, 'unit', 'units')} in service`;
  if (key === 'unvisited' && since) return `${number} not visited since ${dayText(since)}`;
  return `${number} ${SENTENCE[key] ?? key}`;
}

function showSentences(yard) {
  const shown = yard.sentences.filter(sentence => sentence.count > 0 || sentence.key === 'all');
  const links = shown.map(sentence => {
    const current = SENTENCES.every(name => (asked.get(name) ?? '') === (sentence.filter[name] ?? ''));
    const keeps = sentence.key === 'unvisited' && yard.unvisited_since ? { since: yard.unvisited_since } : {};
    return element('a', { href: address({ ...NONE, ...sentence.filter, ...keeps }), 'aria-current': current ? 'true' : undefined },
      sentenceText(sentence, yard.unvisited_since));
  });
  fill(byId('sentences'), folded(links, (link, place) => FIRST_SENTENCES.includes(shown[place].key)));
}

function showSearch(yard) {
  const form = byId('search');
  const options = (all, choices) => [element('option', { value: '' }, all), ...choices.map(([value, text]) => element('option', { value }, text))];
  fill(byId('depot'), options('all depots', yard.depots.map(name => [name, name])));
  fill(byId('condition'), options('any', yard.conditions.map(({ word, phrase }) => [word, phrase])));
  for (const box of form.elements) if (box.name) box.value = asked.get(box.name) ?? '';
  unfold();
  roomy.addEventListener('change', unfold);
  byId('more').open = ['condition', 'begun', 'since', 'older', 'planned'].some(name => asked.get(name));
  form.addEventListener('submit', event => {
    event.preventDefault();
    const typed = Object.fromEntries(new FormData(form));
    location.assign(address({ ...typed, seen: typed.since ? 'unvisited' : asked.get('since') ? '' : asked.get('seen') }));
  });
}

/** From today to a day, in words that promise no more than such a date can. */
function inAbout(day) {
  const days = Math.max(7, (Date.parse(day) - Date.now()) / 86_400_000);
  return days < 70 ? `in about ${count(Math.round(days / 7), 'week', 'weeks')}` : `in about ${Math.round(days / 30.4)} months`;
}

function likely(row) {
  if (row.likely) return [element('p', {}, row.likely), element('p', { class: 'quiet' },
    [row.since ? `since ${monthText(row.since)}` : '', row.advised?.limit_on ? `past the limit ${inAbout(row.advised.limit_on)} if nothing is done` : `past the limit: ${row.impact}`].filter(Boolean).join(' · '))];
  if (row.state === 'steady') return element('p', { class: 'quiet' }, 'nothing likely wrong');
  return element('p', { class: 'quiet' }, row.visit_count ? 'no visit could be judged yet' : 'no visit yet');
}

function worth({ advised }) {
  if (!advised) return '';
  return element('p', { class: 'worth' }, advised.waiting ? [element('b', {}, `waiting a month costs ${advised.waiting}`), ' · '] : '', advised.text);
}

function due({ next_check: next, duty }) {
  if (!next) return duty === 'in_service' ? element('p', {}, element('strong', {}, 'check due')) : '';
  return element('p', { class: next.overdue ? '' : 'quiet' }, next.overdue ? element('strong', {}, 'overdue') : 'due', ` ${next.overdue ? 'since' : 'by'} ${dayText(next.on)}`,
    next.overdue ? `: ${next.reason}` : '');
}

function alsoDue({ filter_overdue_since: filter, warranty_ends: warranty, planned_for: planned }) {
  return [planned ? element('p', {}, `work planned for ${dayText(planned)}`) : '',
    asked.get('filter') && filter ? element('p', { class: 'quiet' }, `filter due since ${dayText(filter)}`) : '',
    asked.get('warranty') && warranty ? element('p', { class: 'quiet' }, `warranty ends ${dayText(warranty)}`) : ''];
}

function rowOf(row) {
  return element('li', { class: row.state },
    tickOf(row),
    element('p', {}, element('span', { class: stateClass(row.state) }, stateText(row.state)),
      row.to_retake ? element('span', { class: 'retake-mark' }, 'last reading: ', element('span', { class: 'state retake' }, 'retake')) : ''),
    element('div', {}, element('a', { class: 'unit-link', href: `../unit/?unit=${part(row.unit_id)}` }, named(row.label)),
      element('p', { class: 'where' }, placeNodes(row.label, row.depot, row.vehicle, row.roof_position)), DUTY[row.duty] ? element('p', {}, DUTY[row.duty]) : ''),
    element('div', { class: 'likely' }, likely(row), worth(row)),
    element('div', { class: 'seen' }, element('p', { class: 'quiet' }, row.last_visit_at ? `last visit ${dayText(row.last_visit_at)}` : 'never visited'), due(row),
      alsoDue(row.days)));
}

const ORDER = {
  '': 'First the unit whose waiting is expected to cost most in the next thirty days, by the weighing of keep, clean, repair and replace and your prices; where waiting costs nothing, or that is not worked out yet, the most pressing first: act, drifting, not judged yet, steady.',
  pressing: 'Most pressing first: act, drifting, not judged yet, steady; within each, the likelier past the limit (capacity below 90 % of the sound unit, or amps above 110 %), the higher.',
  label: 'By name.',
  unvisited: 'Never visited first, then those whose last visit is longest ago.',
};

function showRows(yard) {
  const from = Number(asked.get('row')) || 0;
  byId('rows').start = from + 1;
  fill(byId('rows'), yard.rows.map(rowOf));
  const range = yard.found > yard.rows.length ? `${from + 1} to ${from + yard.rows.length} of ${yard.found}` : `${yard.found}`;
  fill(byId('found'), yard.found ? `${range} ${yard.found === 1 ? 'unit' : 'units'}`
    : ['No unit fits this filter. ', element('a', { href: './' }, 'Show all units')]);
  byId('why').textContent = yard.found ? ORDER[asked.get('order') ?? ''] ?? '' : '';
  fill(byId('pager'), asked.get('after_unit') ? element('a', { class: 'button', href: address({}) }, 'First rows') : '',
    yard.next ? element('a', { class: 'button', href: address({ ...yard.next, row: String(from + yard.rows.length) }), rel: 'next' }, 'More rows') : '');
}

const offer = (title, text, href, press) => element('li', {}, element('h2', {}, title), element('p', {}, text),
  element('a', { class: 'button main', href }, press));

function showFirstStart() {
  byId('first-start').hidden = false;
  document.querySelector('h1').textContent = 'Nothing here yet';
  fill(byId('first-start'), element('p', { class: 'sentence' },
    'Read amps, split, humidity and outdoor air; Longsummer says what this unit, clean and sound, should show in today’s weather, and how sure that is.'),
  element('ul', { class: 'offers' },
    offer('Enter a unit', 'From its plate: two minutes. Then take the first readings.', '../new-unit/', 'Enter the first unit'),
    offer('Bring what you have', 'Units and visits from two CSV files.', '../import/', 'Bring CSV files'),
    offer('Look around first', 'An invented fleet with three seasons of visits, on a record of its own.', '../import/#demo', 'See the demo fleet')));
}

async function show() {
  try {
    const yard = await get('yard', said([...FILTERS, ...PLACE]));
    if (yard.units_in_fleet === 0) {
      showFirstStart();
      return;
    }
    byId('fleet').hidden = false;
    showSentences(yard);
    showSearch(yard);
    showRows(yard);
    layChoice(yard, said(FILTERS));
    showJudgedAgain(byId('judged-again'));
  } catch (refusal) {
    sayFailure(byId('failure'), refusal);
  }
}

layFrame('yard', { withUnits: false });
show();

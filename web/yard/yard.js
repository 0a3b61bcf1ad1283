// The yard: all units, most pressing first. The filter is in the address.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { count, dayText, monthText, placeNodes, stateClass, stateText } from '../shared/words.js';

const FILTERS = ['state', 'seen', 'due', 'duty', 'since', 'depot', 'condition', 'text', 'order', 'page'];
/** Of these one at a time is chosen by a sentence. */
const SENTENCES = ['state', 'seen', 'due', 'duty'];
const NONE = Object.fromEntries(SENTENCES.map(name => [name, '']));
const DUTY = { out_of_service: 'out of service', sold: 'sold' };
const asked = new URLSearchParams(location.search);

/** This page's address with some parts of the filter changed; the page number starts anew. */
function address(changes) {
  const next = new URLSearchParams();
  const merged = { ...Object.fromEntries(FILTERS.map(name => [name, asked.get(name)])), page: '', ...changes };
  for (const name of FILTERS) if (merged[name]) next.set(name, merged[name]);
  return next.size ? `?${next}` : './';
}

function sentenceText({ key, count: number }, since) {
  switch (key) {
    case 'never_judged': return `${number} not judged yet`;
    case 'retake': return `${number} to retake`;
    case 'unvisited': return `${number} not visited since ${dayText(since)}`;
    case 'overdue': return `${number} overdue`;
    case 'out': return `${number} out of service or sold`;
    case 'all': return count(number, 'unit', 'units');
    default: return `${number} ${key}`;
  }
}

function showSentences(yard) {
  const links = yard.sentences.filter(sentence => sentence.count > 0 || sentence.key === 'all').map(sentence => {
    const current = SENTENCES.every(name => (asked.get(name) ?? '') === (sentence.filter[name] ?? ''));
    return element('a', { href: address({ ...NONE, ...sentence.filter }), 'aria-current': current ? 'true' : undefined },
      sentenceText(sentence, yard.unvisited_since));
  });
  fill(byId('sentences'), links);
}

function showSearch(yard) {
  byId('text').value = asked.get('text') ?? '';
  const options = (all, choices, chosen) => [element('option', { value: '' }, all),
    ...choices.map(([value, text]) => element('option', { value, selected: value === chosen }, text))];
  fill(byId('depot'), options('all depots', yard.depots.map(name => [name, name]), asked.get('depot')));
  fill(byId('condition'), options('any', yard.conditions.map(({ word, phrase }) => [word, phrase]), asked.get('condition')));
  byId('order').value = asked.get('order') ?? '';
  byId('search').addEventListener('submit', event => {
    event.preventDefault();
    location.search = address(Object.fromEntries(new FormData(byId('search')))).replace('./', '');
  });
}

function likely(row) {
  if (row.likely) return [element('p', {}, row.likely), element('p', { class: 'quiet' },
    [row.since ? `since ${monthText(row.since)}` : '', `past the limit: ${row.impact}`].filter(Boolean).join(' · '))];
  if (row.state === 'steady') return element('p', { class: 'quiet' }, 'nothing likely wrong');
  return element('p', { class: 'quiet' }, row.visit_count ? 'no visit could be judged yet' : 'no visit yet');
}

function due({ next_check: next, duty }) {
  if (!next) return duty === 'in_service' ? element('p', {}, element('strong', {}, 'check due')) : '';
  return element('p', { class: next.overdue ? '' : 'quiet' }, next.overdue ? element('strong', {}, 'overdue') : 'due', ` ${next.overdue ? 'since' : 'by'} ${dayText(next.on)}`,
    next.overdue ? `: ${next.reason}` : '');
}

function rowOf(row) {
  return element('li', { class: row.state },
    element('p', {}, element('span', { class: stateClass(row.state) }, stateText(row.state)),
      row.to_retake ? element('span', { class: 'retake-mark' }, 'last reading: ', element('span', { class: 'state retake' }, 'retake')) : ''),
    element('div', {}, element('a', { class: 'unit-link', href: `../unit/?unit=${part(row.unit_id)}` }, named(row.label)),
      element('p', { class: 'where' }, placeNodes(row.label, row.depot, row.vehicle, row.roof_position)), DUTY[row.duty] ? element('p', {}, DUTY[row.duty]) : ''),
    element('div', { class: 'likely' }, likely(row)),
    element('div', { class: 'seen' }, element('p', { class: 'quiet' }, row.last_visit_at ? `last visit ${dayText(row.last_visit_at)}` : 'never visited'), due(row)));
}

function showRows(yard) {
  const from = (yard.page - 1) * 50;
  byId('rows').start = from + 1;
  fill(byId('rows'), yard.rows.map(rowOf));
  const range = yard.found > yard.rows.length ? `${from + 1} to ${from + yard.rows.length} of ${yard.found}` : `${yard.found}`;
  fill(byId('found'), yard.found ? `${range} ${yard.found === 1 ? 'unit' : 'units'}`
    : ['No unit fits this filter. ', element('a', { href: './' }, 'Show all units')]);
  byId('why').textContent = asked.get('order') ? ''
    : 'Most pressing first: act, drifting, not judged yet, steady; within each, the likelier past the limit (capacity below 90 % of the sound '
      + 'unit, or amps above 110 %), the higher.';
  fill(byId('pager'), yard.page > 1 ? element('a', { class: 'button', href: address({ page: yard.page - 1 }), rel: 'prev' }, 'Earlier rows') : '',
    yard.page < yard.pages ? element('a', { class: 'button', href: address({ page: yard.page + 1 }), rel: 'next' }, 'More rows') : '');
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
    const yard = await get('yard', Object.fromEntries(FILTERS.map(name => [name, asked.get(name)])));
    if (yard.units_in_fleet === 0) {
      showFirstStart();
      return;
    }
    byId('fleet').hidden = false;
    showSentences(yard);
    showSearch(yard);
    showRows(yard);
  } catch (refusal) {
    sayFailure(byId('failure'), refusal);
  }
}

layFrame('yard', { withUnits: false });
show();

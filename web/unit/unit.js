// One unit: what is said of it, its chart, its record, one visit at a time.

import { byId, element, fill, terms } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { cautionBox, forCondition } from '../shared/cautions.js';
import { rememberUnit } from '../shared/reader.js';
import { dayText, monthText, placeText, stateClass, stateText } from '../shared/words.js';
import { drawHistory } from './history.js';
import { showVisit } from './one-visit.js';
import { showSticker } from './sticker.js';
import { visitTable } from './visit-table.js';

const asked = new URLSearchParams(location.search);
const unitId = asked.get('unit') ?? '';
let page;

function showHead({ unit, state, standing, to_retake: toRetake, visits }) {
  document.title = `${unit.label} – Longsummer`;
  byId('label').textContent = unit.label;
  byId('place').textContent = placeText(unit.label, unit.depot, unit.vehicle, unit.roof_position, unit.in_service ? '' : 'out of service');
  byId('state').className = `${stateClass(state)} large`;
  byId('state').textContent = stateText(state);
  fill(byId('sentence'), standing?.sentence ?? (visits.length ? 'No visit could be judged yet.'
    : 'No visit yet. Take return, supply and outdoor air and the amps after 15 minutes of running.'));
  byId('new-visit').href = `../visit/?unit=${part(unit.id)}`;
  fill(byId('said-of-retake'), toRetake ? element('p', {}, element('span', { class: 'state retake' }, 'retake'),
    ` The last reading cannot be judged: ${toRetake.sentence}`) : '');
}

function listed(title, texts) {
  return texts.length ? [element('h3', {}, title), element('ul', {}, texts.map(text => element('li', {}, text)))] : [];
}

/** What speaks for and against, each with a link to its visit. */
function why(reasons) {
  if (!reasons.length) return '';
  return [element('h3', {}, 'Why'), element('ul', { class: 'reasons' }, reasons.map(({ visit_id: id, day, text }) => element('li', {},
    element('a', { href: `?unit=${part(unitId)}&visit=${part(id)}#visit` }, dayText(day)), ` ${text}`)))];
}

function showAdvice(standing) {
  if (!standing) return;
  const conditions = standing.conditions.map(({ condition, phrase, text }) =>
    [condition === 'none' ? 'nothing wrong' : phrase, text]);
  const next = standing.next_best_reading;
  fill(byId('advice'), element('h2', {}, 'What the readings say'),
    conditions.length ? terms(conditions) : '',
    terms([['Past the limit now', `${standing.impact} (capacity below 90 % of the sound unit, or amps above 110 %)`], ['What it costs now', standing.severity],
      ['Since', standing.since && standing.condition !== 'none' ? monthText(standing.since) : undefined]]),
    listed('Cannot be told', standing.cannot_tell), why(standing.reasons),
    next ? [element('h3', {}, 'Next best reading'), element('p', {}, `${next.text} (${next.minutes} min): ${next.settles}`)] : '',
    standing.before_and_after ? element('p', {}, standing.before_and_after) : '',
    cautionBox(forCondition(standing.condition)));
}

function showCharts() {
  const view = document.querySelector('input[name=view]:checked').value;
  drawHistory(page, view, choose);
}

/** Shows one visit below the chart and puts it into the address. */
async function choose(visitId) {
  const next = new URLSearchParams(location.search);
  next.set('visit', visitId);
  history.replaceState(null, '', `?${next}`);
  await showVisit(byId('visit'), visitId, page.visits.find(row => row.id === visitId));
  byId('visit').scrollIntoView({ block: 'nearest', behavior: 'smooth' });
}

async function show() {
  try {
    page = await get(`units/${part(unitId)}`);
  } catch (refusal) {
    byId('unit').hidden = true;
    sayFailure(byId('failure'), refusal);
    return;
  }
  byId('unit').hidden = false;
  rememberUnit(unitId);
  showHead(page);
  showAdvice(page.standing);
  fill(byId('plate'), terms(page.unit.plate.map(({ term, text }) => [term, text])));
  showSticker(byId('sticker'), page.unit);
  fill(byId('visits'), visitTable(page.visits, choose));
  byId('history').hidden = page.visits.length === 0;
  if (page.visits.length) showCharts();
  if (asked.get('visit')) showVisit(byId('visit'), asked.get('visit'), page.visits.find(row => row.id === asked.get('visit')));
}

layFrame('unit');
document.querySelectorAll('input[name=view]').forEach(box => box.addEventListener('change', showCharts));
document.addEventListener('units-chosen', show);
show();

// One unit: what is said of it, its chart, its record, one visit at a time.

import { byId, element, fill, terms } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { cautionBox, forCondition } from '../shared/cautions.js';
import { rememberUnit } from '../shared/reader.js';
import { inDecimals } from '../shared/numbers.js';
import { dayText, monthText, placeNodes, stateClass, stateText } from '../shared/words.js';
import { showAhead } from './ahead.js';
import { changeList } from './changes.js';
import { drawHistory } from './history.js';
import { showVisit } from './one-visit.js';
import { photoStrip } from './photos.js';
import { pageKeptHere } from './kept-here.js';
import { showSticker } from './sticker.js';
import { visitTable } from './visit-table.js';

const asked = new URLSearchParams(location.search);
const unitId = asked.get('unit') ?? '';
/** A chain of many visits takes its time; after this there is no signal. */
const PATIENCE = 15_000;
const DUTY = { out_of_service: 'out of service', sold: 'sold' };
/** Lines of the plate with numbers of ours; the others are as somebody wrote them. */
const NUMBERS = ['Nominal size', 'Amps on the plate', 'Rated volts', 'Run capacitor label', 'Altitude'];
const DAYS = ['Installed', 'Warranty until'];
let page;
let ahead;

function showDue({ unit, next_check: next, visits }) {
  const place = byId('next-check');
  if (DUTY[unit.duty]) place.textContent = '';
  else if (!next) place.textContent = visits.length ? '' : 'Never checked: a check is due.';
  else fill(place, element(next.overdue ? 'strong' : 'span', {}, `${next.overdue ? 'Overdue since' : 'Next check by'} ${dayText(next.on)}`), `: ${next.reason}.`);
}

function showHead({ unit, state, standing, to_retake: toRetake, visits }) {
  document.title = `${unit.label} – Longsummer`;
  byId('label').textContent = unit.label;
  fill(byId('place'), placeNodes(unit.label, unit.depot, unit.vehicle, unit.roof_position),
    DUTY[unit.duty] ? element('strong', {}, ` · ${DUTY[unit.duty]}`) : '');
  byId('state').className = `${stateClass(state)} large`;
  byId('state').textContent = stateText(state);
  fill(byId('sentence'), standing?.finding ?? (visits.length ? 'No visit could be judged yet.'
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
  const toMend = page.kept_here ? 'Against it' : 'Against it, where it pays (see what lies ahead)';
  fill(byId('advice'), element('h2', {}, 'What the readings say'),
    conditions.length ? terms(conditions) : '',
    terms([['Past the limit at that visit', `${standing.impact} (capacity below 90 % of the sound unit, or amps above 110 %)`], ['What it cost then', standing.severity],
      ['Since', standing.since && standing.condition !== 'none' ? monthText(standing.since) : undefined],
      [toMend, standing.remedy]]),
    listed('Cannot be told', standing.cannot_tell), why(standing.reasons),
    next ? [element('h3', {}, 'Next best reading'), element('p', {}, `${next.text} (${next.minutes} min): ${next.settles}`)] : '',
    standing.before_and_after ? element('p', {}, standing.before_and_after) : '',
    cautionBox(forCondition(standing.condition)));
}

/** The server's answer, or without a signal what is kept on this device. */
async function answer() {
  try {
    return await get(`units/${part(unitId)}`, {}, { signal: AbortSignal.timeout(PATIENCE) });
  } catch (refusal) {
    if (refusal.status) throw refusal;
    return pageKeptHere(unitId);
  }
}

function showCharts() {
  const view = document.querySelector('input[name=view]:checked').value;
  drawHistory(page, view, choose, ahead?.fan ?? []);
}

/** Shows one visit below the chart and puts it into the address. */
async function choose(visitId) {
  const next = new URLSearchParams(location.search);
  next.set('visit', visitId);
  history.replaceState(null, '', `?${next}`);
  await showVisit(byId('visit'), visitId, page);
  byId('visit').scrollIntoView({ block: 'nearest', behavior: 'smooth' });
}

/** What lies ahead comes after what was read, which nobody should wait for. */
async function showFuture() {
  try {
    const [seen, plans] = await Promise.all([get(`units/${part(unitId)}/ahead`), get('planned-work', { unit: unitId })]);
    ahead = seen;
    showAhead(byId('ahead'), page, ahead, plans);
    if (page.visits.length) showCharts();
  } catch (refusal) {
    sayFailure(byId('ahead'), refusal);
  }
  byId('ahead').hidden = false;
}

async function show() {
  try {
    page = await answer();
  } catch (refusal) {
    byId('unit').hidden = true;
    sayFailure(byId('failure'), refusal);
    return;
  }
  byId('unit').hidden = false;
  rememberUnit(unitId);
  showHead(page);
  showDue(page);
  showAdvice(page.standing);
  fill(byId('kept-here'), page.kept_here ?? '');
  document.querySelectorAll('.from-server').forEach(section => { section.hidden = Boolean(page.kept_here); });
  fill(byId('visits'), visitTable(page.visits, page.kept_here ? undefined : choose));
  if (!page.kept_here) showRecord();
}

/** What only the server has: plate, photos, what became of it, and the charts. */
function showRecord() {
  fill(byId('plate'), terms(page.unit.plate.map(({ term, text }) => [term, text && element('span', { dir: 'auto' }, NUMBERS.includes(term) ? inDecimals(text)
    : DAYS.includes(term) ? dayText(text) : text)])));
  byId('edit').href = `../edit-unit/?unit=${part(unitId)}`;
  byId('moved').href = `../moved/?unit=${part(unitId)}`;
  fill(byId('photos'), photoStrip(page.photos, page.visits));
  fill(byId('changes'), changeList(page.changes));
  showSticker(byId('sticker'), page.unit);
  byId('history').hidden = page.visits.length === 0;
  if (page.visits.length) showCharts();
  if (page.unit.duty === 'in_service') showFuture();
  if (asked.get('visit')) showVisit(byId('visit'), asked.get('visit'), page);
}

layFrame('unit');
document.querySelectorAll('input[name=view]').forEach(box => box.addEventListener('change', showCharts));
document.addEventListener('units-chosen', show);
show();

// A visit, on site and in one hand: everything typed is kept on the device until it is saved.

import { byId, element, fill } from '../shared/dom.js';
import { get, newId, part, post } from '../shared/api.js';
import { cautionBox, foldedCautions, forCondition, forWork, MEASURING } from '../shared/cautions.js';
import { layFrame, sayFailure, unitsChoice } from '../shared/frame.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { chooseSystem, draft, dropDraft, keepDraft, rememberTechnician, rememberUnit, system, technician } from '../shared/reader.js';
import { dayText, placeText } from '../shared/words.js';
import { layClock, stopClock } from './clock.js';
import { chooseMoisture, layFields, nameBoxes, readingNames } from './fields.js';
import { judgeSoon, say } from './live.js';
import { askWhich } from './which.js';

const asked = new URLSearchParams(location.search);
const unitId = asked.get('unit');
const corrects = asked.get('correct');
const again = asked.get('again');
const key = `visit.${unitId}.${corrects ?? ''}`;
const form = byId('form');
let id;

function boxes() {
  const all = Object.fromEntries(new FormData(form));
  delete all.work;
  delete all.moisture;
  delete all['system-choice'];
  const work = new FormData(form).getAll('work').join(',');
  return { ...all, work_done: work, system: system(), utc_offset_minutes: String(-new Date().getTimezoneOffset()) };
}

const sent = () => ({ id, boxes: boxes() });

function changed() {
  const kept = keepDraft(key, { id, system: system(), boxes: boxes() });
  byId('kept').textContent = kept ? 'What you type is kept on this device until it is saved.' : 'This device cannot keep what you type: save before you leave the page.';
  fill(byId('work-cautions'), cautionBox(forWork(new FormData(form).getAll('work'))));
  judgeSoon(unitId, sent, readingNames());
}

/** Puts texts into the boxes they are named after. */
function fillBoxes(texts) {
  chooseMoisture(['return_wb', 'return_dp'].find(name => texts[`${name}_f`] || texts[`${name}_c`]) ?? 'return_rh_pct');
  nameBoxes(Object.keys(texts).some(name => name.endsWith('_c')) ? 'si' : Object.keys(texts).some(name => name.endsWith('_f')) ? 'us' : system());
  for (const box of form.elements) {
    if (box.name === 'moisture' || box.name === 'system-choice') continue;
    if (box.type === 'radio') box.checked = box.value === (texts[box.name] ?? '');
    else if (box.name === 'work') box.checked = (texts.work_done ?? '').split(',').includes(box.value);
    else if (box.type === 'checkbox') box.checked = texts[box.name] === box.value;
    else if (box.name && texts[box.name] !== undefined) box.value = texts[box.name];
  }
}

function showLast({ last, last_at: at }) {
  if (!last) return;
  for (const [name, value] of Object.entries(last.shown)) {
    const place = byId(`${['return_wb', 'return_dp'].includes(name) ? 'return_rh_pct' : name}-last`);
    if (place) fill(place, element('b', {}, value.text), `on ${dayText(at)}`);
  }
}

const now = () => new Date(Date.now() - new Date().getTimezoneOffset() * 60_000).toISOString().slice(0, 16);

/** What a second reading after work has in common with the first. */
const UNCHANGED = ['supply_at', 'ambient_at', 'fan_speed', 'power_source', 'technician', 'one_probe', 'volts_off'];

async function firstTexts(blank) {
  const kept = draft(key);
  if (kept) {
    chooseSystem(kept.system);
    id = kept.id;
    return kept.boxes;
  }
  const fresh = { visited_at: now(), technician: technician(), fan_speed: 'high' };
  if (corrects) {
    const { visit } = await get(`visits/${part(corrects)}`);
    chooseSystem(visit.system);
    return visit.boxes;
  }
  if (again && blank.last?.id === again) {
    return { ...fresh, ...Object.fromEntries(UNCHANGED.map(name => [name, blank.last.boxes[name]]).filter(([, text]) => text)) };
  }
  return fresh;
}

async function lay() {
  const blank = await get(`units/${part(unitId)}/blank-visit`);
  rememberUnit(unitId);
  document.title = `${corrects ? 'Correct a visit' : 'New visit'}: ${blank.unit.label} – Longsummer`;
  byId('title').textContent = corrects ? 'Correct a visit' : again ? 'Read again' : 'New visit';
  fill(byId('unit'), element('a', { class: 'button', href: `../unit/?unit=${part(unitId)}` }, blank.unit.label), element('a', { href: './' }, 'another unit'),
    element('span', {}, placeText(blank.unit.label, blank.unit.depot, blank.unit.vehicle, blank.unit.roof_position)));
  layFields();
  id = newId();
  fillBoxes(await firstTexts(blank));
  showLast(blank);
  fill(byId('units'), unitsChoice('system-choice'));
  nameBoxes(system());
  fill(byId('cautions'), foldedCautions(MEASURING, 'Mains, roof, generator: read this before you measure'));
  byId('correction').hidden = !corrects;
  form.hidden = false;
  if (!corrects) layClock(unitId, minutes => {
    const box = byId('run_minutes');
    const read = box.value && (byId('supply_db').value || byId('amps').value);
    if (read || box.dataset.byHand || box.value === String(minutes)) return;
    box.value = String(minutes);
    changed();
  });
  byId('run_minutes').addEventListener('input', event => { event.target.dataset.byHand = event.target.value; });
  changed();
}

function showSaved(answer) {
  form.hidden = true;
  const place = byId('done');
  place.hidden = false;
  byId('title').textContent = answer.stored_before ? 'It was saved before' : 'Saved';
  const work = new FormData(form).getAll('work').length > 0;
  fill(place, answer.verdict ? say(answer.verdict) : '',
    answer.verdict ? cautionBox(forCondition(answer.verdict.condition)) : '',
    element('div', { class: 'buttons' }, element('a', { class: 'button main', href: `../unit/?unit=${part(unitId)}&visit=${part(answer.visit_id)}` }, 'See it on the chart'),
      work ? element('a', { class: 'button', href: `./?unit=${part(unitId)}&again=${part(answer.visit_id)}` }, 'Read again after the work') : '',
      element('a', { class: 'button', href: './' }, 'Next unit')));
  byId('main').focus();
  window.scrollTo(0, 0);
}

async function save(event) {
  event.preventDefault();
  clearProblems(form, byId('problems'));
  byId('save').disabled = true;
  try {
    const answer = await post(corrects ? `visits/${part(corrects)}/correction` : `units/${part(unitId)}/visits`, sent());
    rememberTechnician(byId('technician').value);
    dropDraft(key);
    stopClock();
    showSaved(answer);
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }]);
  } finally {
    byId('save').disabled = false;
  }
}

function unitsChanged({ detail }) {
  nameBoxes(detail);
  byId('units-note').textContent = `The boxes now mean ${detail === 'us' ? '°F' : '°C'}; what you typed is unchanged.`;
  changed();
}

layFrame('visit', { withUnits: false });
if (unitId) {
  form.addEventListener('input', changed);
  form.addEventListener('submit', save);
  document.addEventListener('units-chosen', unitsChanged);
  lay().catch(refusal => sayFailure(byId('failure'), refusal));
} else {
  askWhich(byId('which')).catch(refusal => sayFailure(byId('failure'), refusal));
}

// A visit, on site and in one hand: everything typed is kept on the device until it is saved.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, newId, part } from '../shared/api.js';
import { cautionBox, foldedCautions, forCondition, forWork, MEASURING } from '../shared/cautions.js';
import { layFrame, sayFailure, unitsChoice } from '../shared/frame.js';
import { offsetMinutes, openUnit } from '../shared/judging.js';
import { draftKept, dropDraft, dropItem, keepDraft, keepItem, outboxItem } from '../shared/pocket.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { chooseSystem, rememberTechnician, rememberUnit, system, technician } from '../shared/reader.js';
import { sendPhotos } from '../shared/photo-sending.js';
import { sendItem } from '../shared/sending.js';
import { count, dayText, momentText, placeNodes } from '../shared/words.js';
import { layClock, stopClock } from './clock.js';
import { chooseMoisture, layFields, moveOnWithEnter, nameBoxes, readingNames } from './fields.js';
import { openWhatMatters, sayWhatIsHeld } from './folds.js';
import { judgeNow, judgeSoon, say } from './live.js';
import { dropPhotos, layPhotos, photoCount, releasePhotos } from './photos.js';
import { askWhich } from './which.js';

const asked = new URLSearchParams(location.search);
const unitId = asked.get('unit');
const again = asked.get('again');
/** A visit that waits on this device, opened to be put right before it is sent. */
const waitingId = asked.get('waiting');
let corrects = asked.get('correct') ?? undefined;
const key = `visit.${unitId}.${corrects ?? waitingId ?? ''}`;
const form = byId('form');
let id;
let opened;

function boxes() {
  const all = Object.fromEntries(new FormData(form));
  delete all.work;
  delete all.moisture;
  delete all['system-choice'];
  delete all['photo-subject'];
  const work = new FormData(form).getAll('work').join(',');
  const offset = offsetMinutes(opened.row.time_zone, all.visited_at) ?? -new Date(all.visited_at || Date.now()).getTimezoneOffset();
  return { ...all, work_done: work, system: system(), utc_offset_minutes: String(offset) };
}

const typed = () => ({ id, boxes: boxes(), corrects });

let keeping = Promise.resolve();
let toKeep;

/** Writes the latest state of the form to this device; what is said of it is true when it is said. */
function keep() {
  toKeep = { id, system: system(), boxes: boxes(), kept_at: Date.now() };
  keeping = keeping.then(async () => {
    const draft = toKeep;
    if (!draft) return;
    toKeep = undefined;
    const kept = await keepDraft(key, draft).then(() => true, () => false);
    if (!toKeep) byId('kept').textContent = kept ? 'What you type is kept on this device until it is saved.'
      : 'This device cannot keep what you type: save before you leave the page.';
  });
}

function changed() {
  keep();
  show();
}

function show() {
  fill(byId('work-cautions'), cautionBox(forWork(new FormData(form).getAll('work'))));
  sayWhatIsHeld(form, photoCount());
  judgeSoon(opened, typed, readingNames());
}

/** Puts texts into the boxes they are named after. */
function fillBoxes(texts) {
  chooseMoisture(['return_wb', 'return_dp'].find(name => texts[`${name}_f`] || texts[`${name}_c`]) ?? 'return_rh_pct');
  nameBoxes(Object.keys(texts).some(name => name.endsWith('_c')) ? 'si' : Object.keys(texts).some(name => name.endsWith('_f')) ? 'us' : system());
  for (const box of form.elements) {
    if (['moisture', 'system-choice', 'photo-subject'].includes(box.name) || box.type === 'file') continue;
    if (box.type === 'radio') box.checked = box.value === (texts[box.name] ?? '');
    else if (box.name === 'work') box.checked = (texts.work_done ?? '').split(',').includes(box.value);
    else if (box.type === 'checkbox') box.checked = texts[box.name] === box.value;
    else if (box.name && texts[box.name] !== undefined) box.value = texts[box.name];
  }
}

function showLast({ id: lastId, at, shown }) {
  if (!lastId) return;
  for (const [name, value] of Object.entries(shown)) {
    const place = byId(`${['return_wb', 'return_dp'].includes(name) ? 'return_rh_pct' : name}-last`);
    if (place) fill(place, element('b', {}, value.text), element('span', { class: 'off-screen' }, ` on ${dayText(at)}`));
  }
  byId('last-note').textContent = `Beside the boxes: the visit of ${dayText(at)}.`;
}

/** The time on the clock of the unit's depot, or of this device where that is not known. */
function now() {
  const zone = opened.row.time_zone;
  const utc = new Date().toISOString().slice(0, 16);
  const offset = offsetMinutes(zone, utc) ?? -new Date().getTimezoneOffset();
  return new Date(Date.now() + offset * 60_000).toISOString().slice(0, 16);
}

/** What a second reading after work has in common with the first. */
const UNCHANGED = ['supply_at', 'ambient_at', 'fan_speed', 'power_source', 'technician', 'one_probe', 'volts_off'];

/** The visit to be corrected as it was typed: from the server where it answers, else from the record kept here. */
async function textsToCorrect() {
  try {
    const { visit } = await get(`visits/${part(corrects)}`, {}, { signal: AbortSignal.timeout(4_000) });
    chooseSystem(visit.system);
    return visit.boxes;
  } catch {
    return opened.visit(corrects).boxes ?? {};
  }
}

/** After so many hours what was typed and not saved is likely of another day, and so is its time. */
const STALE_HOURS = 3;

function sayTypedBefore({ kept_at: at, boxes: { visited_at: visitedAt } }) {
  if (!at || Date.now() - at < STALE_HOURS * 3_600_000) return;
  fill(byId('typed-before'), element('p', {}, `Typed earlier and not saved: a visit of ${momentText(visitedAt)}.`),
    element('button', { type: 'button', onclick: async () => {
      await keeping;
      await Promise.all([dropDraft(key), dropPhotos()]);
      location.reload();
    } }, 'Leave that and start anew'));
}

async function firstTexts(last) {
  const kept = await draftKept(key);
  if (kept) {
    chooseSystem(kept.system);
    id = kept.id;
    sayTypedBefore(kept);
    return kept.boxes;
  }
  const waiting = waitingId && await outboxItem(waitingId).catch(() => undefined);
  if (waiting) {
    chooseSystem(waiting.boxes.system);
    ({ id, corrects } = waiting);
    return waiting.boxes;
  }
  const fresh = { visited_at: now(), technician: technician(), fan_speed: 'high' };
  if (corrects) return textsToCorrect();
  if (again && last.id === again) {
    return { ...fresh, ...Object.fromEntries(UNCHANGED.map(name => [name, last.boxes[name]]).filter(([, text]) => text)) };
  }
  return fresh;
}

/** Says when the record is not the server's of this moment. */
function sayHowFresh() {
  const { fresh, gone, row, waiting } = opened;
  if (fresh) return;
  const since = row.as_of_ms ? `the record of ${momentText(new Date(row.as_of_ms - new Date().getTimezoneOffset() * 60_000).toISOString())}`
    : 'what was typed on this phone';
  byId('how-fresh').textContent = gone ? 'The server no longer has this unit. What you save is kept on this phone until that is settled.'
    : `No signal: judged here, by ${since}${waiting.length ? ` and ${waiting.length} that wait to be sent` : ''}.`;
}

async function lay() {
  opened = await openUnit(unitId);
  const { row } = opened;
  const last = opened.visit();
  rememberUnit(unitId);
  document.title = `${corrects ? 'Correct a visit' : 'New visit'}: ${row.unit.label} – Longsummer`;
  byId('title').textContent = corrects ? 'Correct a visit' : again ? 'Read again' : 'New visit';
  fill(byId('unit'), element('a', { class: 'button', href: `../unit/?unit=${part(unitId)}` }, named(row.unit.label)), element('a', { href: './' }, 'another unit'),
    element('span', {}, placeNodes(row.unit.label, row.unit.depot, row.vehicle, row.roof_position)));
  sayHowFresh();
  layFields();
  id = newId();
  fillBoxes(await firstTexts(last));
  showLast(last);
  fill(byId('units'), unitsChoice('system-choice'));
  nameBoxes(system());
  fill(byId('cautions'), foldedCautions(MEASURING, 'Mains, roof, generator: read this before you measure'));
  byId('correction').hidden = !corrects;
  openWhatMatters(form);
  await layPhotos(id, () => sayWhatIsHeld(form, photoCount()));
  form.hidden = false;
  if (!corrects) layClock(unitId, minutes => {
    const box = byId('run_minutes');
    const read = box.value && (byId('supply_db').value || byId('amps').value);
    if (read || box.dataset.byHand || box.value === String(minutes)) return;
    box.value = String(minutes);
    changed();
  });
  byId('run_minutes').addEventListener('input', event => { event.target.dataset.byHand = event.target.value; });
  show();
}

/** What comes after work: reading again, or, where there is another machine now, its plate. */
function afterWork(work) {
  if (work.includes('unit_replaced')) {
    const day = new FormData(form).get('visited_at').slice(0, 10);
    return element('a', { class: 'button', href: `../moved/?unit=${part(unitId)}&kind=replacement&on=${day}` }, 'Record the new machine');
  }
  return work.length ? element('a', { class: 'button', href: `./?unit=${part(unitId)}&again=${part(id)}` }, 'Read again after the work') : '';
}

function showDone(title, verdict, words, buttons) {
  form.hidden = true;
  const place = byId('done');
  place.hidden = false;
  byId('title').textContent = title;
  byId('how-fresh').textContent = '';
  const work = new FormData(form).getAll('work');
  fill(place, words, verdict ? say(verdict) : '', verdict ? cautionBox(forCondition(verdict.condition)) : '',
    work.includes('unit_replaced') ? element('p', {}, 'The new machine has a plate and a history of its own: record it before its first visit.') : '',
    element('div', { class: 'buttons' }, buttons, afterWork(work),
      element('a', { class: 'button', href: './' }, 'Next unit')));
  byId('main').focus();
  window.scrollTo(0, 0);
}

function showSaved(answer, said) {
  const differs = answer.verdict && answer.verdict.sentence !== said.sentence;
  showDone(answer.stored_before ? 'It was saved before' : 'Saved', answer.verdict ?? said, differs
    ? element('p', { class: 'otherwise' }, `By what this phone knew: ${said.sentence} The server knows more of this unit or of the fleet and says:`) : '',
  element('a', { class: 'button main', href: `../unit/?unit=${part(unitId)}&visit=${part(answer.visit_id)}` }, 'See it on the chart'));
}

function showKept(said, refusal) {
  const stuck = refusal.status !== 0 && refusal.status < 500;
  const words = stuck ? refusal.problems.map(problem => `${problem.limit} ${problem.remedy}`).join(' ')
    : 'It is sent by itself as soon as there is a signal.';
  showDone(stuck ? 'Kept on this phone, not yet settled' : 'Kept on this phone', said, element('p', {}, words),
    element('a', { class: stuck ? 'button main' : 'button', href: '../phone/' }, stuck ? 'Settle it' : 'What waits to be sent'));
}

function sayPhotos({ sent, refused, waiting }) {
  const said = [sent ? `${count(sent, 'photo', 'photos')} sent` : '', waiting ? `${count(waiting, 'photo waits', 'photos wait')} to be sent with the visit` : '',
    refused ? `${count(refused, 'photo was', 'photos were')} refused` : ''].filter(Boolean);
  if (said.length) byId('done').append(element('p', { class: 'quiet' }, `${said.join(', ')}.`));
}

/** The visit as it waits to be sent, with what was said of it here. */
const itemOf = ({ state, sentence }) => ({ id, kind: 'visit', unit_id: unitId, label: opened.row.unit.label, corrects, boxes: boxes(),
  said: { state, sentence }, saved_at: Date.now(), state: 'waiting' });

async function keepAndSend(verdict) {
  const item = itemOf(verdict);
  const kept = await keepItem(item).then(() => true, () => false);
  const { answer, refusal } = await sendItem(item);
  if (refusal?.status === 422 || (refusal && !kept)) {
    await dropItem(id).catch(() => undefined);
    throw kept ? refusal : { problems: [{ field: '', given: '', limit: 'This phone could not keep the visit, and it could not be sent.',
      remedy: 'Leave this page open, free some storage or go where there is a signal, and save again.' }] };
  }
  rememberTechnician(byId('technician').value);
  await keeping;
  await dropDraft(key);
  await releasePhotos();
  const photos = await sendPhotos();
  stopClock();
  if (refusal) showKept(verdict, refusal);
  else showSaved(answer, verdict);
  sayPhotos(photos);
}

async function save(event) {
  event.preventDefault();
  clearProblems(form, byId('problems'));
  byId('save').disabled = true;
  try {
    const { verdict, problems } = judgeNow(opened, () => ({ ...typed(), saving: true }), readingNames());
    if (problems.length) showProblems(form, byId('problems'), problems);
    else await keepAndSend(verdict);
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
  moveOnWithEnter(form, byId('save'));
  document.addEventListener('units-chosen', unitsChanged);
  lay().catch(refusal => sayFailure(byId('failure'), refusal));
} else {
  askWhich(byId('which')).catch(refusal => sayFailure(byId('failure'), refusal));
}

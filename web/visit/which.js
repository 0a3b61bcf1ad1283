// Which unit: last used first, then a search by name, serial or vehicle; by the server where it answers, else among those kept here.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { unitsLike } from '../shared/pocket.js';
import { lastUnits } from '../shared/reader.js';
import { unitsOfOurOwn } from '../shared/sending.js';
import { sayFailure } from '../shared/frame.js';
import { placeNodes } from '../shared/words.js';

const MOST = 50;
/** How many are offered before anything is typed: those used last, and a few more. */
const MOST_UNASKED = 10;

const link = row => element('li', {}, element('a', { href: `../visit/?unit=${part(row.unit_id)}` }, named(row.label),
  element('span', { class: 'hint' }, placeNodes(row.label, row.depot, row.vehicle, row.roof_position))));

const rowKept = row => ({ unit_id: row.unit_id, label: row.unit.label, depot: row.unit.depot, vehicle: row.vehicle, roof_position: row.roof_position });

/** What the server finds, and what was added here and is not there yet; without a signal what is kept here. */
async function found(text) {
  try {
    const yard = await get('yard', { text, order: 'label' }, { signal: AbortSignal.timeout(4_000) });
    const there = new Set(yard.rows.map(row => row.unit_id));
    const own = new Set((await unitsOfOurOwn()).map(row => row.unit_id));
    const ours = (await unitsLike(text)).filter(row => own.has(row.unit_id) && !there.has(row.unit_id));
    return { rows: [...ours.map(rowKept), ...yard.rows], all: ours.length + yard.found };
  } catch (refusal) {
    if (refusal.status) throw refusal;
    const kept = await unitsLike(text);
    return { rows: kept.map(rowKept), offline: true, all: kept.length };
  }
}

/** @param left how many fit and are not shown */
const remark = (offline, left) => [offline ? 'No signal: these are units kept on this phone.' : '',
  left ? `${left} more: type a part of the name, serial, vehicle or owner.` : ''].filter(Boolean).join(' ');

const byName = (a, b) => a.label.localeCompare(b.label, undefined, { numeric: true });

let asked = 0;

async function search(list, note, text) {
  const question = ++asked;
  const answer = await found(text);
  if (question !== asked) return;
  const last = lastUnits();
  const used = row => (last.includes(row.unit_id) ? last.indexOf(row.unit_id) : last.length);
  const rows = [...answer.rows].sort((a, b) => used(a) - used(b) || byName(a, b)).slice(0, text.trim() ? MOST : MOST_UNASKED);
  note.textContent = remark(answer.offline, answer.all - rows.length);
  fill(list, rows.length ? rows.map(link)
    : element('li', {}, 'No unit fits. ', element('a', { href: '../new-unit/' }, 'Enter a new unit')));
}

export async function askWhich(place) {
  place.hidden = false;
  const note = element('p', { class: 'quiet' });
  const list = element('ul', { class: 'found', 'aria-live': 'polite' });
  const box = element('input', { type: 'search', id: 'which-text', autocomplete: 'off' });
  fill(place, element('div', { class: 'field' }, element('label', { for: 'which-text' }, 'Which unit? ',
    element('span', { class: 'hint' }, 'name, serial, vehicle or owner')), box), note, list);
  const run = () => search(list, note, box.value).catch(refusal => sayFailure(byId('failure'), refusal));
  box.addEventListener('input', run);
  await run();
}

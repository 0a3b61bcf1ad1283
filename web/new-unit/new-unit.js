// A new unit from its plate; without a signal it is kept on this device and sent later, under the id it was given here.

import { byId, fill } from '../shared/dom.js';
import { newId, part } from '../shared/api.js';
import { fillForm, texts } from '../shared/form.js';
import { layFrame } from '../shared/frame.js';
import { depotsKnown, readNewUnit } from '../shared/judging.js';
import { dropItem, keepItem, keepUnit } from '../shared/pocket.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { sendItem } from '../shared/sending.js';
import { altitudeField, layPairs, moreFields, nameField, placeFields, plateFields } from '../shared/unit-fields.js';

const form = byId('form');

/** Lays the boxes; what was typed stays when the units are chosen anew. */
async function layFields() {
  const typed = texts(form);
  const depots = (await depotsKnown()).map(({ name }) => name).filter(Boolean);
  fill(byId('name-field'), nameField());
  layPairs(byId('place-fields'), [...placeFields(depots), altitudeField()]);
  layPairs(byId('plate-fields'), plateFields());
  layPairs(byId('more-fields'), moreFields());
  const altitude = typed.altitude_ft ?? typed.altitude_m;
  fillForm(form, { ...typed, altitude_ft: altitude, altitude_m: altitude });
}

/** An id that nobody else makes, and that still says what it is. */
const idOf = label => `${label.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '').slice(0, 40) || 'unit'}-${newId().slice(1, 7)}`;

let id;

async function keepAndSend(boxes) {
  id ??= idOf(boxes.label ?? '');
  const depot = (await depotsKnown()).find(({ name }) => name === boxes.site);
  const { unit, problems } = await readNewUnit({ id, boxes, depot_altitude_m: depot?.altitude_m });
  if (problems.length) throw { problems };
  const item = { id: `unit ${id}`, kind: 'unit', unit_id: id, label: boxes.label, boxes, saved_at: Date.now(), state: 'waiting' };
  const text = name => boxes[name] ?? '';
  await keepUnit({ unit_id: id, unit, serial: text('serial'), vehicle: text('vehicle'), roof_position: text('roof_position'), owner: text('owner'),
    make: text('make'), model: text('model'), time_zone: depot?.time_zone, boxes, visits: [], own: true });
  await keepItem(item);
  const { refusal } = await sendItem(item);
  if (refusal?.status === 422) {
    await dropItem(item.id);
    throw refusal;
  }
  location.assign(!refusal ? `../unit/?unit=${part(id)}` : refusal.status ? '../phone/' : `../visit/?unit=${part(id)}`);
}

async function save(event) {
  event.preventDefault();
  clearProblems(form, byId('problems'));
  byId('save').disabled = true;
  try {
    await keepAndSend(Object.fromEntries([...new FormData(form)].filter(([, text]) => text)));
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: 'This device could not keep the unit.',
      remedy: 'Free some storage, or go where there is a signal, and try again.' }]);
  } finally {
    byId('save').disabled = false;
  }
}

layFrame('new-unit');
document.addEventListener('units-chosen', layFields);
form.addEventListener('submit', save);
layFields().then(() => { form.hidden = false; });

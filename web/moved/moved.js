// What becomes of a machine: moved, mixed up with another and put right, replaced. Each with who, when and why.

import { byId, element, fill } from '../shared/dom.js';
import { get, part, post } from '../shared/api.js';
import { fillForm, fillWho, onSubmit, texts } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { altitudeField, becauseFields, layPairs, moreFields, nameField, placeFields, plateFields } from '../shared/unit-fields.js';
import { placeNodes } from '../shared/words.js';

const asked = new URLSearchParams(location.search);
const unitId = asked.get('unit') ?? '';
const form = byId('form');
const PLACE = ['label', 'vehicle', 'roof_position', 'site'];
let page;

const EXPLAINED = {
  move: 'The machine and its visits go to the new place. Its altitude becomes that of the new depot.',
  places: 'Names and places are exchanged; each machine keeps its plate and its visits. Use this when the visits were recorded by the plates, or when the machines really changed places.',
  plates: 'Plates, serials, days of installation and warranties are exchanged; names, places and visits stay. Use this when the visits were recorded by the places.',
  replacement: 'The new machine takes over name and place and starts without a history. The old one keeps its visits and goes out of service.',
};

const kind = () => form.elements.kind.value;

const group = (title, units) => (units.length ? element('optgroup', { label: title }, units.map(({ id, label, serial }) =>
  element('option', { value: id }, serial ? `${label}, serial ${serial}` : label))) : '');

function neighbours() {
  const beside = page.neighbours.filter(unit => unit.same_vehicle);
  const others = page.neighbours.filter(unit => !unit.same_vehicle);
  if (!page.neighbours.length) return element('p', {}, 'There is no other unit on this vehicle or at this depot.');
  const select = element('select', { id: 'other_unit', name: 'other_unit' }, element('option', { value: '' }, 'choose'), group('on the same vehicle', beside),
    group('at the same depot', others));
  if (beside.length === 1) select.value = beside[0].id;
  return element('div', { class: 'field' }, element('label', { for: 'other_unit' }, 'With which unit?'), select);
}

function oldOne() {
  return [element('div', { class: 'field' }, element('label', { for: 'old_label' }, 'The old machine is called from now on ',
    element('span', { class: 'hint' }, 'empty: its name and the day')), element('input', { type: 'text', id: 'old_label', name: 'old_label', dir: 'auto' })),
  element('fieldset', { class: 'field' }, element('legend', {}, 'The old machine is'), element('div', { class: 'choices' },
    element('label', {}, element('input', { type: 'radio', name: 'old_duty', value: 'out_of_service', checked: true }), 'scrapped or kept as a spare'),
    element('label', {}, element('input', { type: 'radio', name: 'old_duty', value: 'sold' }), 'sold')))];
}

function layFields() {
  const { boxes, depots } = page;
  byId('explained').textContent = EXPLAINED[kind()];
  if (kind() === 'move') {
    layPairs(byId('fields'), [nameField(), ...placeFields(depots)]);
    fillForm(form, Object.fromEntries(PLACE.map(name => [name, boxes[name] ?? ''])));
  } else if (kind() === 'replacement') {
    fill(byId('fields'), element('h2', {}, 'The new machine'), element('div', { class: 'pairs' }, nameField(), placeFields(depots), altitudeField(), plateFields()),
      element('details', {}, element('summary', {}, 'More, where it is known'), element('div', { class: 'pairs' }, moreFields())),
      element('h2', {}, 'The old machine'), oldOne());
    const kept = [...PLACE, 'owner', 'air_delivery', 'altitude_ft', 'altitude_m'];
    fillForm(form, Object.fromEntries(kept.map(name => [name, boxes[name]]).filter(([, text]) => text !== undefined)));
  } else {
    fill(byId('fields'), neighbours());
  }
}

function address() {
  if (kind() === 'move') return `units/${part(unitId)}/move`;
  return kind() === 'replacement' ? `units/${part(unitId)}/replacement` : `units/${part(unitId)}/swap`;
}

async function lay() {
  page = await get(`units/${part(unitId)}/form`);
  const { unit } = page;
  document.title = `Moved, mixed up, replaced: ${unit.label} – Longsummer`;
  byId('title').textContent = `What became of ${unit.label}?`;
  fill(byId('place'), placeNodes(unit.label, unit.depot, unit.vehicle, unit.roof_position));
  byId('leave').href = `../unit/?unit=${part(unitId)}`;
  layPairs(byId('because-fields'), becauseFields({ day: 'On which day' }));
  if (asked.get('kind')) fillForm(form, { kind: asked.get('kind') });
  if (asked.get('on')) fillForm(form, { happened_on: asked.get('on') });
  layFields();
  fillWho(form);
  form.hidden = false;
}

layFrame('moved');
byId('kinds').addEventListener('change', layFields);
document.addEventListener('units-chosen', async () => {
  const typed = texts(form);
  page = await get(`units/${part(unitId)}/form`);
  layFields();
  fillForm(form, typed);
});
onSubmit(form, byId('problems'), async boxes => {
  const { unit_id: nowAt } = await post(address(), { boxes: { ...boxes, what: kind() } });
  location.assign(`../unit/?unit=${part(nowAt)}#changes`);
});
lay().catch(refusal => sayFailure(byId('failure'), refusal));

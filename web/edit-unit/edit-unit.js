// A unit's plate and place, changed; the record keeps what it was.

import { byId, fill } from '../shared/dom.js';
import { get, part, post } from '../shared/api.js';
import { fillForm, fillWho, onSubmit, texts } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { altitudeField, becauseFields, layPairs, moreFields, nameField, placeFields, plateFields } from '../shared/unit-fields.js';
import { placeNodes } from '../shared/words.js';

const unitId = new URLSearchParams(location.search).get('unit') ?? '';
const form = byId('form');

async function lay() {
  const { unit, boxes, depots } = await get(`units/${part(unitId)}/form`);
  document.title = `Change ${unit.label} – Longsummer`;
  byId('title').textContent = `Change ${unit.label}`;
  fill(byId('place'), placeNodes(unit.label, unit.depot, unit.vehicle, unit.roof_position));
  byId('moved').href = `../moved/?unit=${part(unitId)}`;
  byId('leave').href = `../unit/?unit=${part(unitId)}`;
  layPairs(byId('place-fields'), [nameField(), ...placeFields(depots), altitudeField()]);
  layPairs(byId('plate-fields'), plateFields());
  layPairs(byId('more-fields'), moreFields());
  layPairs(byId('because-fields'), becauseFields());
  fillForm(form, { ...boxes, rated_volts: boxes.rated_volts ?? '' });
  fillWho(form);
  form.hidden = false;
}

layFrame('edit-unit');
document.addEventListener('units-chosen', async () => {
  const typed = texts(form);
  await lay();
  fillForm(form, typed);
});
onSubmit(form, byId('problems'), async boxes => {
  await post(`units/${part(unitId)}/form`, { boxes });
  location.assign(`../unit/?unit=${part(unitId)}`);
});
lay().catch(refusal => sayFailure(byId('failure'), refusal));

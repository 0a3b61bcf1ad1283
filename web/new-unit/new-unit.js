// A new unit from its plate.

import { byId, element, fill } from '../shared/dom.js';
import { get, part, post } from '../shared/api.js';
import { layFrame } from '../shared/frame.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { system } from '../shared/reader.js';

const form = byId('form');

function labelLengths() {
  document.querySelectorAll('[data-unit=length]').forEach(place => { place.textContent = system() === 'us' ? 'ft' : 'm'; });
  byId('altitude').name = system() === 'us' ? 'altitude_ft' : 'altitude_m';
}

async function offerDepots() {
  const yard = await get('yard').catch(() => ({ depots: [] }));
  fill(byId('depots'), yard.depots.map(name => element('option', {}, name)));
}

async function save(event) {
  event.preventDefault();
  clearProblems(form, byId('problems'));
  byId('save').disabled = true;
  try {
    const added = await post('units', { boxes: Object.fromEntries(new FormData(form)) });
    location.assign(`../unit/?unit=${part(added.unit_id)}`);
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }]);
  } finally {
    byId('save').disabled = false;
  }
}

layFrame('new-unit');
labelLengths();
document.addEventListener('units-chosen', labelLengths);
form.addEventListener('submit', save);
offerDepots();

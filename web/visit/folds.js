// Parts of the visit that are folded away until they are needed; each says in its line what it holds.

import { byId, fill, named } from '../shared/dom.js';
import { momentText } from '../shared/words.js';
import { WORKS } from './fields.js';

const NOTHING = { coil_condition: 'not looked', iced_coil: '', work: 'none', fan_speed: 'not noted', power_source: '' };
const SHORT = { fan_speed: 'fan ' };
const WORK = Object.fromEntries(WORKS);

function held(form, name) {
  const values = new FormData(form).getAll(name).filter(Boolean);
  if (!values.length) return NOTHING[name];
  if (name === 'work') return values.map(value => WORK[value]).join(', ');
  if (name === 'iced_coil') return 'ice';
  return (SHORT[name] ?? '') + values[0];
}

/** Says in each folded part's line what it holds now. */
export function sayWhatIsHeld(form, photoCount) {
  document.querySelectorAll('[data-now]').forEach(place => {
    place.textContent = place.dataset.now.split(' ').map(name => held(form, name)).filter(Boolean).join(', ');
  });
  const note = form.elements.notes.value.trim();
  byId('note-now').textContent = [note ? 'a note' : '', photoCount ? `${photoCount} ${photoCount === 1 ? 'photo' : 'photos'}` : ''].filter(Boolean).join(', ') || 'none';
  const at = form.elements.visited_at.value;
  fill(byId('who-now'), named(form.elements.technician.value.trim() || 'nobody named'), at ? `, ${momentText(at)}` : '');
}

/** Opens the folded parts around an element. */
export function unfold(place) {
  for (let fold = place?.closest('details'); fold; fold = fold.parentElement?.closest('details')) fold.open = true;
}

/** Opens what holds something from the start: a name that is still missing, work and notes of a visit to be corrected. */
export function openWhatMatters(form) {
  byId('who').open = !form.elements.technician.value;
  byId('work').open = new FormData(form).getAll('work').length > 0;
  byId('note').open = Boolean(form.elements.notes.value.trim());
  byId('coils').open = Boolean(new FormData(form).get('coil_condition')) || form.elements.iced_coil.checked;
}

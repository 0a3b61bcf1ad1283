// Which unit: last used first, then a search by name, serial or vehicle.

import { byId, element, fill } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { lastUnits } from '../shared/reader.js';
import { sayFailure } from '../shared/frame.js';
import { placeText } from '../shared/words.js';

const link = row => element('li', {}, element('a', { href: `./?unit=${part(row.unit_id)}` }, row.label,
  element('span', { class: 'hint' }, placeText(row.label, row.depot, row.vehicle, row.roof_position))));

async function search(list, text) {
  const yard = await get('yard', { text, order: 'label' });
  const last = lastUnits();
  const used = row => (last.includes(row.unit_id) ? last.indexOf(row.unit_id) : last.length);
  const rows = [...yard.rows].sort((a, b) => used(a) - used(b));
  fill(list, rows.length ? rows.map(link)
    : element('li', {}, 'No unit fits. ', element('a', { href: '../new-unit/' }, 'Enter a new unit')));
}

export async function askWhich(place) {
  place.hidden = false;
  const list = element('ul', { class: 'found', 'aria-live': 'polite' });
  const box = element('input', { type: 'search', id: 'which-text', autocomplete: 'off' });
  fill(place, element('div', { class: 'field' }, element('label', { for: 'which-text' }, 'Which unit? ',
    element('span', { class: 'hint' }, 'name, serial, vehicle or owner')), box), list);
  const run = () => search(list, box.value).catch(refusal => sayFailure(byId('failure'), refusal));
  box.addEventListener('input', run);
  await run();
}

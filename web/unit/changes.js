// What became of a unit: moved, mixed up and put right, replaced, changed; with who, when and why. Nothing of it is ever edited away.

import { element, named } from '../shared/dom.js';
import { part } from '../shared/api.js';
import { dayText, recordedText } from '../shared/words.js';

const KINDS = { added: 'Added', edited: 'Changed', moved: 'Moved', places_swapped: 'Places exchanged', plates_swapped: 'Plates exchanged',
  replaced: 'Replaced by another machine', took_place: 'Took the place of another machine', duty: 'Service changed',
  visit_given: 'A visit was another unit’s', visit_taken: 'A visit was this unit’s' };
const WITH = { places_swapped: 'with', plates_swapped: 'with', replaced: 'now', took_place: 'before', visit_given: 'given to', visit_taken: 'taken from' };
const FIELDS = { label: 'Name', site: 'Depot', vehicle: 'Vehicle', position: 'Place on the roof', altitude_m: 'Altitude, m', make: 'Make', model: 'Model',
  serial: 'Serial', nominal_btuh: 'Nominal size, Btu/h', refrigerant: 'Refrigerant', rated_amps: 'Amps on the plate', rated_amps_kind: 'Kind of those amps',
  rated_volts: 'Rated volts', capacitor_label_uf: 'Run capacitor label, µF', soft_starter: 'Soft starter', variable_speed: 'Variable speed',
  ducted: 'Through ducts', installed_on: 'Installed', warranty_until: 'Warranty until', owner: 'Owner', duty: 'Service' };

const words = text => (text ? named(text.replaceAll('_', ' ')) : 'nothing');

function fieldLine({ field, before, after }) {
  return element('li', {}, `${FIELDS[field] ?? field}: `, words(before), ' → ', words(after));
}

function changeItem({ kind, on, at, by, reason, other, fields }) {
  return element('li', {}, element('p', {}, element('strong', {}, KINDS[kind] ?? kind), other ? [`, ${WITH[kind] ?? 'with'} `,
    element('a', { href: `?unit=${part(other.id)}` }, named(other.label))] : '', `, ${dayText(on)}`),
  element('p', { class: 'quiet' }, by ? ['by ', named(by)] : 'by nobody named', `, recorded ${recordedText(at)}`, reason ? ': ' : '', named(reason)),
  fields.length ? element('ul', {}, fields.map(fieldLine)) : '');
}

/** Latest first; the first ones open, the rest folded. */
export function changeList(changes) {
  if (!changes.length) return element('p', { class: 'quiet' }, 'Nothing was recorded: it stands where it was entered, with the plate it was entered with.');
  const items = [...changes].reverse().map(changeItem);
  const first = items.slice(0, 5);
  const rest = items.slice(5);
  return [element('ol', { class: 'timeline' }, first),
    rest.length ? element('details', {}, element('summary', {}, `${rest.length} earlier`), element('ol', { class: 'timeline' }, rest)) : ''];
}

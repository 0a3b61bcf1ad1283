// The boxes of a unit: where it is, its plate, and what is known besides. Pages lay them where they need them.

import { element, fill } from './dom.js';
import { system } from './reader.js';

const hintOf = text => (text ? element('span', { class: 'hint' }, text) : '');

function line({ name, label, hint, list, type = 'text', ...attributes }) {
  return element('div', { class: 'field' }, element('label', { for: name }, label, ' ', hintOf(hint)),
    element('input', { type, id: name, name, list: list && `${name}-list`, dir: type === 'text' ? 'auto' : undefined, ...attributes }),
    list ? element('datalist', { id: `${name}-list` }, list.map(text => element('option', {}, text))) : '');
}

function number({ name, label, hint, unit, value, ...attributes }) {
  return element('div', { class: 'field' }, element('label', { for: name }, label, ' ', hintOf(hint)),
    element('div', { class: 'box' }, element('input', { type: 'text', inputmode: 'decimal', id: name, name, value, ...attributes }),
      element('span', { class: 'unit' }, unit)));
}

function choice({ name, label, hint, options }) {
  return element('fieldset', { class: 'field' }, element('legend', {}, label, ' ', hintOf(hint)), element('div', { class: 'choices' },
    options.map(([value, text]) => element('label', {}, element('input', { type: 'radio', name, value, checked: value === '' }), text))));
}

const AMPS = [['input', 'running amps of the whole unit, at the rating'], ['rla', 'RLA, the compressor alone'], ['rla_plus_fan', 'RLA plus the fan'], ['', 'don’t know']];
const DELIVERY = [['ducted', 'through ceiling ducts'], ['non_ducted', 'straight down'], ['', 'don’t know']];

export const nameField = () => line({ name: 'label', label: 'Name', hint: 'what you call it, such as the vehicle’s number and “front”', required: true });

/** Vehicle, place on the roof, depot. */
export const placeFields = (depots = []) => [line({ name: 'vehicle', label: 'Vehicle' }),
  line({ name: 'roof_position', label: 'Place on the roof', list: ['front', 'middle', 'rear'] }),
  line({ name: 'site', label: 'Depot', list: depots })];

const lengthUnit = () => (system() === 'us' ? 'ft' : 'm');

export const altitudeField = () => number({ name: `altitude_${lengthUnit()}`, label: 'Altitude of the depot', unit: lengthUnit(),
  hint: 'thin air carries less; within 500 ft is good enough. Empty: as the depot says', 'data-box': 'altitude', 'data-length': 'altitude' });

/** What the plate says. */
export const plateFields = () => [line({ name: 'make', label: 'Make' }), line({ name: 'model', label: 'Model' }),
  line({ name: 'serial', label: 'Serial', hint: 'the history belongs to this number, not to the vehicle', autocapitalize: 'characters' }),
  number({ name: 'nominal_btuh', label: 'Nominal size', hint: '11,000, 13,500 and 15,000 are usual', unit: 'Btu/h' }),
  line({ name: 'refrigerant', label: 'Refrigerant', list: ['R-22', 'R-410A', 'R-32'] }),
  number({ name: 'rated_volts', label: 'Rated volts', unit: 'V', value: '115' }),
  number({ name: 'rated_amps', label: 'Amps on the plate', unit: 'A' }),
  choice({ name: 'rated_amps_kind', label: 'What are those amps?', hint: 'Makers choose differently, and it decides what the unit should draw.', options: AMPS }),
  choice({ name: 'air_delivery', label: 'The cold air goes', options: DELIVERY })];

const tick = (name, text) => element('label', {}, element('input', { type: 'checkbox', name, value: 'yes' }), text);

/** What is known besides. */
export const moreFields = () => [element('fieldset', { class: 'field' }, element('legend', {}, 'Fitted'), element('div', { class: 'choices' },
  tick('variable_speed', 'variable-speed compressor'), tick('soft_starter', 'soft starter'))),
number({ name: 'capacitor_label_uf', label: 'Run capacitor’s label', unit: 'µF' }), line({ name: 'installed_on', label: 'Installed on', type: 'date' }),
line({ name: 'warranty_until', label: 'Warranty until', type: 'date' }), line({ name: 'owner', label: 'Owner' })];

/** Who says so, on which day, and why. */
export const becauseFields = ({ day, why = 'may be left empty' } = {}) => [line({ name: 'by', label: 'Who you are', autocomplete: 'name' }),
  day ? line({ name: 'happened_on', label: day, hint: 'empty: today', type: 'date' }) : '', line({ name: 'reason', label: 'Why', hint: why })];

/** Lays fields into a place of the page, in columns where there is room. */
export const layPairs = (place, fields) => fill(place, element('div', { class: 'pairs' }, fields));

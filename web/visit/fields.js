// The boxes for readings, in the order in which they are read on site.

import { byId, element, fill } from '../shared/dom.js';
import { READING_NAMES } from '../shared/readings.js';

export const SUPPLY_AT = [['discharge', 'louver'], ['near_register', 'near register'], ['far_register', 'far register'], ['', 'not noted']];
export const AMBIENT_AT = [['inlet', 'at the condenser'], ['ground', 'on the ground'], ['', 'not noted']];
export const MOISTURE = [['return_rh_pct', 'RH', '%'], ['return_wb', 'wet bulb', 'temperature'], ['return_dp', 'dew point', 'temperature']];

/** By the start of the box's name; temperatures get _f or _c. */
const box = (name, more) => ({ name, label: READING_NAMES[name][0], unit: READING_NAMES[name][1], ...more });
export const READINGS = [
  box('return_db', { hint: 'dry bulb, at the filter or grille' }),
  box('return_rh_pct', { hint: 'at the same place', moisture: true }),
  box('ambient_db', { hint: 'in the shade', choice: ['ambient_at', AMBIENT_AT, 'Outdoor air read'] }),
  box('supply_db', { hint: 'dry bulb', choice: ['supply_at', SUPPLY_AT, 'Supply air read at'] }),
  box('volts', { hint: 'while it runs' }),
  box('amps', { hint: 'whole unit, around one conductor' }),
];
export const OPTIONAL = [
  box('ambient_rh_pct', { hint: '' }),
  box('room_db', { hint: 'middle of the room; a return much colder means a divider leak' }),
  box('return_second_db', { hint: 'at the same place, to check the first' }),
  box('condenser_entering_db', { hint: 'if outdoor air was read elsewhere' }),
  box('condenser_leaving_db', { hint: 'mean of two or three points' }),
  box('fan_only_amps', { hint: 'fan high, compressor off' }),
  box('start_amps', { hint: 'MAX hold at the start' }),
  box('capacitor_uf', { hint: 'discharged and disconnected' }),
];
export const WORKS = [['filter', 'filter cleaned or replaced'], ['evaporator_coil', 'indoor coil cleaned'], ['condenser_coil', 'condenser coil cleaned'],
  ['capacitor', 'run capacitor replaced'], ['divider', 'divider sealed'], ['fan_motor', 'fan motor replaced'],
  ['sealed_system', 'sealed circuit opened'], ['unit_replaced', 'unit replaced']];

const COLUMNS = { 3: 'three', 4: 'four' };

const choose = (name, options, label) => element('div', { class: `choices brief even ${COLUMNS[options.length]}`, role: 'radiogroup', 'aria-label': label },
  options.map(([value, text], index) => element('label', {},
    element('input', { type: 'radio', name, value, checked: name === 'moisture' ? index === 0 : value === '' }), text)));

function reading({ name, label, hint, unit, choice, moisture }) {
  const input = element('input', { type: 'text', inputmode: 'decimal', id: name, name, 'data-name': name, 'data-unit': unit, 'data-label': label,
    enterkeyhint: 'next', 'aria-describedby': `${name}-last ${name}-question` });
  return element('div', { class: 'reading', id: `${name}-reading` }, element('label', { for: name }, label, element('span', { class: 'hint' }, hint)),
    element('div', { class: 'row' }, element('div', { class: 'box' }, input, element('span', { class: 'unit', id: `${name}-unit` })),
      element('div', { class: 'last', id: `${name}-last` })),
    moisture ? choose('moisture', MOISTURE, 'Humidity as') : '', choice ? choose(...choice) : '', element('p', { class: 'question', id: `${name}-question` }));
}

/** Lays all boxes into the form. */
export function layFields() {
  fill(byId('volts-off'), reading({ name: 'volts_off', label: 'Volts with the unit off', hint: '', unit: 'V' }));
  fill(byId('run-minutes'), reading({ name: 'run_minutes', label: 'Minutes it had run', hint: 'by the clock', unit: 'min' }));
  fill(byId('readings'), READINGS.map(reading));
  fill(byId('optional-readings'), OPTIONAL.map(reading));
  fill(byId('works'), WORKS.map(([value, text]) => element('label', {}, element('input', { type: 'checkbox', name: 'work', value }), text)));
  document.querySelectorAll('[name=moisture]').forEach(box => box.addEventListener('change', nameMoisture));
}

let shownSystem = 'us';

/** The humidity box is named by what is typed into it. */
function nameMoisture() {
  const [name, , unit] = MOISTURE.find(([value]) => value === document.querySelector('[name=moisture]:checked').value);
  const input = byId('return_rh_pct');
  input.dataset.name = name;
  input.dataset.unit = unit;
  nameBoxes(shownSystem);
}

export function chooseMoisture(name) {
  document.querySelector(`[name=moisture][value=${name}]`).checked = true;
  nameMoisture();
}

/** Names each box by its unit of measure and writes the unit into it; what was typed stays. */
export function nameBoxes(system) {
  shownSystem = system;
  for (const input of document.querySelectorAll('[data-name]')) {
    const temperature = input.dataset.unit === 'temperature';
    input.name = temperature ? input.dataset.name + (system === 'us' ? '_f' : '_c') : input.dataset.name;
    byId(`${input.id}-unit`).textContent = temperature ? (system === 'us' ? '°F' : '°C') : input.dataset.unit;
  }
}

/** Not within a folded part. */
const isShown = box => box.checkVisibility?.() ?? box.offsetParent !== null;

/** Enter, or the number pad's key for it, goes on to the next reading and from the last one to `afterLast`; it never saves. */
export function moveOnWithEnter(form, afterLast) {
  form.addEventListener('keydown', event => {
    if (event.key !== 'Enter' || event.isComposing || !event.target.dataset?.name) return;
    event.preventDefault();
    const boxes = [...form.querySelectorAll('[data-name]')].filter(isShown);
    (boxes[boxes.indexOf(event.target) + 1] ?? afterLast).focus();
  });
}

export const readingNames = () => [...document.querySelectorAll('[data-name]')].map(input => input.id);

// The reader's choices: units, decimals, dates, name. Kept on this device.

import { byId, element, fill, terms } from '../shared/dom.js';
import { layFrame, unitsChoice } from '../shared/frame.js';
import { inDecimals } from '../shared/numbers.js';
import { chosenDates, chosenDecimalSign, chooseDates, chooseDecimalSign, rememberTechnician, system, technician } from '../shared/reader.js';
import { momentText } from '../shared/words.js';

const DECIMALS = [['', 'as this device'], ['point', '16.5'], ['comma', '16,5']];
const DATES = [['', 'as this device'], ['day-first', '2 Jul 2026'], ['month-first', 'Jul 2, 2026'], ['year-first', '2026-07-02']];

const choices = (name, options, chosen, choose) => options.map(([value, text]) => element('label', {},
  element('input', { type: 'radio', name, value, checked: value === chosen, onchange: () => {
    choose(value);
    location.reload();
  } }), text));

function show() {
  const us = system() === 'us';
  fill(byId('shown'), terms([['A temperature', inDecimals(us ? '77.3 °F' : '25.2 °C')], ['A split', inDecimals(us ? '16.5 °F, expected 19.8 ± 2.4 °F' : '9.2 °C, expected 11.0 ± 1.3 °C')],
    ['An altitude', us ? '1230 ft' : '375 m'], ['A visit', momentText('2026-07-02T14:05:00-06:00')]]));
}

layFrame('reading', { withUnits: false });
fill(byId('units'), unitsChoice());
fill(byId('decimals'), choices('decimal', DECIMALS, chosenDecimalSign(), chooseDecimalSign));
fill(byId('dates'), choices('dates', DATES, chosenDates(), chooseDates));
byId('by').value = technician();
byId('by').addEventListener('input', event => rememberTechnician(event.target.value.trim()));
byId('form').addEventListener('submit', event => event.preventDefault());
document.addEventListener('units-chosen', show);
show();

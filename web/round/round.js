// The round: units to visit on a day in walking order, on paper with boxes to fill by hand.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, part, post } from '../shared/api.js';
import { cautionBox, forCondition, forWork, MEASURING } from '../shared/cautions.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { count, dayText } from '../shared/words.js';
import { AMBIENT_AT, OPTIONAL, READINGS, SUPPLY_AT, WORKS } from '../visit/fields.js';
import { byDepot, nameOf, stateLine, unitText, whereNodes } from './stops.js';

const id = new URLSearchParams(location.search).get('round');
const workText = word => WORKS.find(([value]) => value === word)?.[1] ?? word;

/** What a condition asks to be looked at on site. */
const LOOK = { condenser_fouling: 'dirt on the condenser coil; air that leaves it hot and uneven', evaporator_fouling: 'filter, frost, weak air at the registers',
  refrigerant_loss: 'warm suction line, little condensate, oil at a joint', compressor_wear: 'hot compressor, noise', capacitor_weak: 'long start; microfarads against the label',
  air_recirculation: 'divider in the ceiling box; return colder than the room', other: 'whatever is unusual', not_cooling: 'whether the compressor starts' };

/** What is done about it, where nothing is planned: what to have with one. */
const BRING = { condenser_fouling: 'condenser_coil', evaporator_fouling: 'filter', capacitor_weak: 'capacitor', air_recirculation: 'divider' };
const THINGS = { filter: ['filter', 'filters'], evaporator_coil: ['indoor coil to clean', 'indoor coils to clean'], condenser_coil: ['condenser coil to clean', 'condenser coils to clean'],
  capacitor: ['run capacitor', 'run capacitors'], divider: ['divider to seal', 'dividers to seal'], fan_motor: ['fan motor', 'fan motors'],
  sealed_system: ['sealed circuit to open', 'sealed circuits to open'], unit_replaced: ['new unit', 'new units'] };

function needed(stops) {
  const counts = {};
  for (const stop of stops) {
    const works = new Set([...stop.works, ...(stop.filter_overdue_since ? ['filter'] : []), ...(BRING[stop.condition] ? [BRING[stop.condition]] : [])]);
    works.forEach(work => { counts[work] = (counts[work] ?? 0) + 1; });
  }
  return Object.entries(counts).map(([work, number]) => count(number, ...THINGS[work]));
}

function showBring(stops) {
  const works = [...new Set(stops.flatMap(stop => stop.works))];
  const cautions = [...new Set([...MEASURING, ...forWork(works), ...stops.flatMap(stop => forCondition(stop.condition))])];
  const things = needed(stops);
  fill(byId('bring'), element('p', {}, element('b', {}, 'Bring: '), 'thermometers, humidity meter, clamp meter, voltmeter, run clock',
    things.length ? `; by what is planned or likely: ${things.join(', ')}` : '', '.'), cautionBox(cautions));
}

const square = text => element('span', {}, element('span', { class: 'square' }), text);
const ticks = (name, choices) => element('p', { class: 'ticks' }, element('span', {}, `${name}:`), choices.filter(([value]) => value).map(([, text]) => square(text)));

function blank({ name, label, unit }, last) {
  return element('li', {}, element('span', { class: 'name' }, label, last[name] ? element('span', { class: 'last-read' }, ` (${last[name].text})`) : ''),
    element('span', { class: 'line' }, unitText(unit)));
}

const RUN = { name: 'run_minutes', label: 'Minutes it had run', unit: 'min' };
const OFF = { name: 'volts_off', label: 'Volts, unit off', unit: 'V' };

function moisture(last) {
  const [name] = ['return_wb', 'return_dp'].filter(other => last[other]);
  return name ? { ...last, return_rh_pct: last[name] } : last;
}

function stopSheet(stop, index) {
  const look = [LOOK[stop.condition], stop.look_for ? `${stop.look_for.text}: ${stop.look_for.settles}` : '', stop.filter_overdue_since ? 'filter past its interval' : ''].filter(Boolean);
  const last = moisture(stop.last);
  return element('section', { class: stop.visited ? 'stop done' : 'stop' },
    element('h2', {}, `${index + 1}. `, nameOf(stop), stop.visited ? ' – visited' : ''),
    element('img', { class: 'code', alt: `Code that opens the visit of ${stop.label}`, src: `../api/units/${part(stop.unit_id)}/sticker.svg?scheme=${location.protocol.slice(0, -1)}` }),
    element('p', { class: 'where' }, whereNodes(stop)), stateLine(stop),
    look.length ? element('p', { class: 'likely-line' }, element('b', {}, 'Look for: '), look.join(' · ')) : '',
    stop.works.length ? element('p', {}, element('b', {}, 'Planned: '), stop.works.map(workText).join(', ')) : '',
    element('ul', { class: 'blanks' }, [RUN, ...READINGS, OFF, ...OPTIONAL].map(box => blank(box, last))),
    element('div', { class: 'tick-rows' }, ticks('Filter found', [['c', 'clean'], ['d', 'dirty'], ['m', 'missing']]), ticks('Condenser coil', [['c', 'clean'], ['l', 'light'], ['h', 'heavy']]),
    ticks('Humidity as', [['r', 'RH'], ['w', 'wet bulb'], ['d', 'dew point']]), ticks('Supply read at', SUPPLY_AT), ticks('Outdoor air read', AMBIENT_AT),
    ticks('Also', [['l', 'fan was low'], ['i', 'ice on the indoor coil'], ['g', 'generator'], ['v', 'inverter'], ['o', 'one thermometer for both']]),
    ticks('Work done', WORKS)), element('p', { class: 'ticks' }, element('span', {}, 'Time, name, note:')), element('span', { class: 'note-line' }));
}

function standsForm(round) {
  const box = (stop, name, label) => element('td', {}, element('input', { type: 'text', 'data-unit': stop.unit_id, 'data-name': name, value: stop[name], 'aria-label': `${label} of ${stop.label}`, dir: 'auto' }));
  const table = element('table', { class: 'stands-table' }, element('caption', {}, 'Rows and places in your own words; numbers are counted, so 2 comes before 10.'),
    element('thead', {}, element('tr', {}, ['Unit', 'Row', 'Place'].map(text => element('th', { scope: 'col' }, text)))),
    element('tbody', {}, round.stops.map(stop => element('tr', {}, element('th', { scope: 'row' }, nameOf(stop)), box(stop, 'row', 'Row'), box(stop, 'place', 'Place')))));
  const problems = element('div', {});
  const form = element('form', {}, problems, element('div', { class: 'scroll' }, table), element('div', { class: 'buttons' }, element('button', { class: 'main' }, 'Save and walk in this order')));
  form.addEventListener('submit', async event => {
    event.preventDefault();
    const value = (stop, name) => form.querySelector(`[data-unit="${CSS.escape(stop.unit_id)}"][data-name=${name}]`).value;
    try {
      show(await post(`rounds/${part(id)}/stands`, { stands: round.stops.map(stop => ({ unit_id: stop.unit_id, row: value(stop, 'row'), place: value(stop, 'place') })) }));
      byId('does').querySelector('button').focus();
    } catch (refusal) {
      sayFailure(problems, refusal);
    }
  });
  return element('details', {}, element('summary', {}, 'Where they stand'), form);
}

function show(round) {
  const name = round.title || `Round of ${dayText(round.for_day)}`;
  document.title = `${name} – Longsummer`;
  fill(byId('title'), named(name));
  const left = round.stops.filter(stop => !stop.visited).length;
  fill(byId('about'), round.title ? `${dayText(round.for_day)} · ` : '', count(round.stops.length, 'unit', 'units'), left < round.stops.length ? `, ${left} still to visit` : '',
    round.made_by ? [' · made by ', named(round.made_by)] : '');
  fill(byId('does'), element('div', { class: 'buttons' }, element('button', { type: 'button', class: 'main', onclick: () => window.print() }, 'Print it'),
    element('a', { class: 'button', href: `../typed-in/?round=${part(id)}` }, 'Type it in'), element('a', { class: 'button', href: './' }, 'Other rounds')));
  showBring(round.stops);
  fill(byId('stands'), standsForm(round));
  fill(byId('stops'), byDepot(round.stops, stopSheet));
}

function list({ rounds }) {
  fill(byId('about'), rounds.length ? 'The latest rounds.' : ['No round yet. ', element('a', { href: '../yard/' }, 'Choose units in the yard'), ' and make one.']);
  fill(byId('stops'), rounds.length ? element('ul', { class: 'round-list' }, rounds.map(round => element('li', {},
    element('a', { href: `?round=${part(round.round_id)}` }, round.title ? named(round.title) : `Round of ${dayText(round.for_day)}`),
    element('p', { class: 'where' }, `${dayText(round.for_day)} · ${round.visited} of ${count(round.stops, 'unit', 'units')} visited`)))) : '');
}

layFrame('round');
document.addEventListener('units-chosen', () => location.reload());
(id ? get(`rounds/${part(id)}`).then(show) : get('rounds').then(list)).catch(refusal => sayFailure(byId('failure'), refusal));

// Who reads with what.

import { byId, element, fill, named, terms } from '../shared/dom.js';
import { get, post } from '../shared/api.js';
import { fillForm, onSubmit, texts } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { system, technician } from '../shared/reader.js';

const form = byId('form');
const USES = [['thermometer', 'Return and supply air', 'thermometer', 'temperature'], ['ambient_thermometer', 'Outdoor air', 'thermometer', 'temperature'],
  ['hygrometer', 'Humidity', 'hygrometer', '% RH'], ['clamp', 'Amps', 'clamp', '% of the reading'], ['voltmeter', 'Volts', 'voltmeter', 'V']];

function useFields(kinds) {
  return USES.map(([name, title, use, unit]) => {
    const temperature = unit === 'temperature';
    const limit = `${name}_limit${temperature ? (system() === 'us' ? '_f' : '_c') : ''}`;
    return element('fieldset', { class: 'field' }, element('legend', {}, title), element('div', { class: 'pairs' },
      element('div', { class: 'field' }, element('label', { for: name }, `Read with`), element('select', { id: name, name }, kinds.filter(kind => kind.use === use)
        .map(({ kind, phrase, expanded }) => element('option', { value: kind }, `± ${expanded}: ${phrase}`)))),
      element('div', { class: 'field' }, element('label', { for: limit }, 'Limit from its own sheet, ±'), element('div', { class: 'box' },
        element('input', { type: 'text', inputmode: 'decimal', id: limit, name: limit, 'data-label': `${title}, limit` }),
        element('span', { class: 'unit' }, temperature ? (system() === 'us' ? '°F' : '°C') : unit)))));
  });
}

const card = toolkit => element('section', { class: 'card' }, element('h2', {}, named(toolkit.name)), terms(toolkit.lines.map(({ term, text }) => [term, text])),
  element('div', { class: 'buttons' }, element('button', { type: 'button', onclick: () => edit(toolkit) }, element('span', {}, 'Change those of ', named(toolkit.name)))));

function edit(toolkit) {
  form.reset();
  fillForm(form, toolkit.boxes);
  byId('name').focus();
  byId('edit-title').scrollIntoView({ block: 'start' });
}

async function show() {
  const typed = texts(form);
  const page = await get('technicians');
  fill(byId('list'), page.technicians.length ? page.technicians.map(card)
    : element('p', {}, 'Nobody’s instruments are known yet: the first of each kind below is taken for everybody.'));
  fill(byId('names'), page.others.map(name => element('option', {}, name)));
  fill(byId('uses'), useFields(page.kinds));
  fillForm(form, { name: technician(), ...Object.fromEntries(Object.entries(typed).filter(([, text]) => text)) });
}

layFrame('instruments');
document.addEventListener('units-chosen', show);
onSubmit(form, byId('problems'), async boxes => {
  await post('technicians', { boxes });
  form.reset();
  await show();
  byId('main').focus();
  window.scrollTo(0, 0);
});
show().catch(refusal => sayFailure(byId('failure'), refusal));

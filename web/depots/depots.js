// The places where vehicles stand.

import { byId, element, fill, named, terms } from '../shared/dom.js';
import { get, post } from '../shared/api.js';
import { fillForm, fillWho, onSubmit, texts } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { system } from '../shared/reader.js';
import { becauseFields, layPairs } from '../shared/unit-fields.js';
import { count, momentText } from '../shared/words.js';

const form = byId('form');
let page;

function nameBoxes() {
  const us = system() === 'us';
  byId('altitude').name = us ? 'altitude_ft' : 'altitude_m';
  document.querySelectorAll('[data-unit=length]').forEach(place => { place.textContent = us ? 'ft' : 'm'; });
  document.querySelectorAll('[data-unit=temperature]').forEach(place => { place.textContent = us ? '°F' : '°C'; });
}

const card = depot => element('section', { class: 'card' }, element('h2', {}, named(depot.name)),
  terms([['Units', count(depot.units, 'unit', 'units')], ['Altitude', depot.altitude || 'not known'],
    ['Time zone', depot.time_zone ? `${depot.time_zone}, now ${momentText(depot.now)}` : 'not known: visits are written by the clock of whoever reads'],
    ['Running', depot.run_hours_per_year === undefined ? 'as usual for that half of the earth' : `${depot.run_hours_per_year} hours a year`]]),
  element('div', { class: 'buttons' }, element('button', { type: 'button', onclick: () => edit(depot) }, element('span', {}, 'Change ', named(depot.name))),
    element('a', { class: 'button', href: `../yard/?${new URLSearchParams({ depot: depot.name })}` }, 'Its units')));

function edit(depot) {
  form.reset();
  byId('edit').hidden = false;
  clearProblems(form, byId('problems'));
  byId('edit-title').textContent = depot ? `Change ${depot.name}` : 'A new depot';
  byId('name-field').hidden = Boolean(depot);
  fillForm(form, depot?.boxes ?? {});
  byId('climate').open = Boolean(depot?.boxes.hours_1);
  if (depot) layPairs(byId('because-fields'), becauseFields());
  else fill(byId('because-fields'));
  fillWho(form);
  byId('warning').hidden = !depot?.units;
  byId('warning').textContent = depot?.units ? `Another altitude or other hours judge its ${count(depot.units, 'unit', 'units')} anew; that takes a while for many.` : '';
  byId(depot ? 'altitude' : 'name').focus();
  byId('edit').scrollIntoView({ block: 'start' });
}

const preset = ({ name, boxes }) => element('button', { type: 'button', onclick: () => fillForm(form, boxes) }, name);
const NOBODY_SAYS = Object.fromEntries([...Array(12)].map((_, month) => [`hours_${month + 1}`, '']).concat(
  ['opens_month', 'opens_day', 'closes_month', 'closes_day'].map(name => [name, ''])));

async function fromMeans() {
  clearProblems(form, byId('problems'));
  const ending = system() === 'us' ? '_f' : '_c';
  const means = Object.fromEntries([...document.querySelectorAll('[data-mean]')].map(box => [box.dataset.mean + ending, box.value]));
  try {
    fillForm(form, (await post('depots/hours', { boxes: { ...texts(form), ...means } })).boxes);
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems);
  }
}

async function show() {
  page = await get('depots');
  fill(byId('list'), page.depots.length ? page.depots.map(card)
    : element('p', {}, 'No depot yet. One is added here, or by itself when a unit names it.'));
  fill(byId('presets'), page.presets.map(preset), element('button', { type: 'button', onclick: () => fillForm(form, NOBODY_SAYS) }, 'nobody says'));
}

layFrame('depots');
nameBoxes();
fill(byId('zones'), (Intl.supportedValuesOf?.('timeZone') ?? []).map(zone => element('option', {}, zone)));
byId('new').addEventListener('click', () => edit());
byId('leave').addEventListener('click', () => { byId('edit').hidden = true; });
byId('from-means').addEventListener('click', fromMeans);
document.addEventListener('units-chosen', () => {
  nameBoxes();
  show();
});
onSubmit(form, byId('problems'), async boxes => {
  await post('depots', { boxes });
  byId('edit').hidden = true;
  await show();
  byId('main').focus();
  window.scrollTo(0, 0);
});
show().catch(refusal => sayFailure(byId('failure'), refusal));

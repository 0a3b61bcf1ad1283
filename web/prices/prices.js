// The price list of the fleet, of a depot or of a unit.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, part, sendBytes } from '../shared/api.js';
import { onSubmit, texts } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { inDecimals } from '../shared/numbers.js';
import { widerText } from '../shared/prices.js';
import { clearProblems, showProblems } from '../shared/problems.js';

const asked = new URLSearchParams(location.search);
const query = asked.get('unit') ? { unit: asked.get('unit') } : asked.get('depot') ? { depot: asked.get('depot') } : {};
const form = byId('form');
let list;

const all = () => document.querySelector('input[name=length]:checked').value === 'all';
const address = path => `${path}${Object.keys(query).length ? `?${new URLSearchParams(query)}` : ''}`;

function figure({ key, meaning, unit, own, owners, ...rest }) {
  return element('div', { class: own ? 'figure changed' : 'figure', hidden: !all() && !owners },
    element('label', { for: key }, meaning, element('span', { class: 'hint' }, own ? element('span', { class: 'mark' }, 'changed; ') : '', `without it: ${widerText({ unit, ...rest })}`)),
    element('div', { class: 'box' }, element('input', { type: 'text', inputmode: 'decimal', id: key, name: key, value: inDecimals(own), placeholder: '' }),
      unit ? element('span', { class: 'unit' }, unit) : ''));
}

function show(prices) {
  list = prices;
  const whose = { fleet: 'the whole fleet', depot: prices.label, unit: prices.label }[prices.scope];
  document.title = `Prices for ${whose} – Longsummer`;
  fill(byId('title'), 'Prices and figures for ', named(whose));
  byId('about').textContent = 'Defaults of ours are a start, not facts: put in your own. An empty box goes by the wider list'
    + (prices.scope === 'fleet' ? ', here our default.' : prices.scope === 'depot' ? ', the fleet’s.' : ', the depot’s or the fleet’s.');
  byId('currency').value = prices.currency;
  byId('currency-field').hidden = prices.scope !== 'fleet';
  fill(byId('figures'), prices.figures.map(figure));
  form.hidden = false;
}

async function showScopes() {
  const { depots } = await get('depots');
  const choices = [['', 'the whole fleet'], ...depots.map(({ name }) => [`depot=${part(name)}`, `depot ${name}`])];
  if (query.unit) choices.push([`unit=${part(query.unit)}`, `unit ${list.label}`]);
  const now = query.unit ? `unit=${part(query.unit)}` : query.depot ? `depot=${part(query.depot)}` : '';
  fill(byId('scope'), choices.map(([value, text]) => element('option', { value, selected: value === now }, text)));
}

/** Only what differs from what is kept is sent. */
function changed(boxes) {
  const before = Object.fromEntries(list.figures.map(({ key, own }) => [key, inDecimals(own)]));
  return Object.fromEntries(Object.entries(boxes).filter(([key, text]) => (key === 'currency' ? text !== list.currency : text.trim() !== before[key])));
}

async function takeFile({ target }) {
  const [file] = target.files;
  if (!file) return;
  clearProblems(form, byId('problems'));
  try {
    show(await sendBytes('prices/file', query, new Blob([await file.text()], { type: 'text/csv' })));
    byId('done').textContent = 'Taken in.';
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: 'That did not work.', remedy: 'Try again.' }]);
  }
  target.value = '';
}

layFrame('prices', { withUnits: false });
byId('download').href = address('../api/prices/file');
byId('file').addEventListener('change', takeFile);
byId('scope').addEventListener('change', () => location.assign(`?${byId('scope').value}`));
document.querySelectorAll('input[name=length]').forEach(box => box.addEventListener('change', () => {
  const typed = texts(form);
  show(list);
  for (const [key, text] of Object.entries(typed)) form.elements[key].value = text;
}));
onSubmit(form, byId('problems'), async boxes => {
  show(await sendBytes('prices', query, new Blob([JSON.stringify({ boxes: changed(boxes) })], { type: 'application/json' })));
  byId('done').textContent = 'Kept.';
});
get('prices', query).then(show).then(showScopes).catch(refusal => sayFailure(byId('failure'), refusal));

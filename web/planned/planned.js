// Work that is planned: for one unit, and the list of all with what it costs and saves.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, newId, part, post } from '../shared/api.js';
import { cautionBox, forWork } from '../shared/cautions.js';
import { onSubmit, texts } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { dayText, withDays } from '../shared/words.js';
import { WORKS } from '../shared/works.js';

const asked = new URLSearchParams(location.search);
const unitId = asked.get('unit') ?? '';
const form = byId('form');
let planId = newId();

const query = () => (unitId ? { unit: unitId } : { depot: asked.get('depot') ?? '' });
const cell = (content, style, head) => element('td', { class: style, 'data-head': head }, content);
const give = ({ saves, spread }) => (saves.minor < 0 ? `costs ${saves.text.replace('-', '')} ± ${spread.text} more than it saves` : `saves ${saves.text} ± ${spread.text}`);

async function end(plan, how) {
  if (how === 'drop' && !confirm(`Take “${plan.work_text}” for ${plan.label} off the plan?`)) return;
  try {
    await post(`planned-work/${part(plan.id)}/${how}`, {});
    byId('done').textContent = how === 'done' ? 'Noted as done. Read the unit again, so that its history says so too.' : 'Taken off the plan.';
    showList(await get('planned-work', query()));
  } catch (refusal) {
    sayFailure(byId('failure'), refusal);
  }
}

const planRow = plan => element('tr', {}, element('th', { scope: 'row' }, element('a', { href: `../unit/?unit=${part(plan.unit_id)}` }, named(plan.label))),
  cell(named(plan.depot)), cell([plan.work_text, plan.note ? element('div', { class: 'quiet' }, named(plan.note)) : '']), cell(dayText(plan.planned_for), 'day', 'by'),
  cell([plan.costs.text, plan.price ? '' : element('div', { class: 'quiet' }, 'by the list')], 'money', 'costs'), cell(give(plan), undefined, 'expected:'),
  cell(element('div', { class: 'buttons' }, element('button', { type: 'button', onclick: () => end(plan, 'done') }, 'Done'),
    element('button', { type: 'button', onclick: () => end(plan, 'drop') }, 'Drop'))));

function showList({ plans, depots }) {
  fill(byId('list'), plans.length ? element('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-labelledby': 'list-title' }, element('table', { class: 'plans stack' },
    element('thead', {}, element('tr', {}, ['Unit', 'Depot', 'Work', 'By', 'Costs', 'Expected, against leaving it alone', ''].map(text => element(text ? 'th' : 'td', { scope: text ? 'col' : undefined }, text)))),
    element('tbody', {}, plans.map(planRow)))) : element('p', {}, 'Nothing is planned here. Plan work from a unit’s page or its weighing.'));
  fill(byId('sums'), depots.map(sum => element('p', {}, element('strong', {}, named(sum.depot || 'Without a depot')),
    `: ${sum.plans === 1 ? '1 plan' : `${sum.plans} plans`} for ${sum.costs.text}; against leaving all alone it is expected that the plan ${give(sum)}.`)),
  plans.length ? element('p', { class: 'quiet small' }, 'Savings are over the time that the price list looks ahead, after the price. ± is the spread, one standard deviation over what may be wrong; units are taken to have nothing to do with each other.') : '');
}

function showCautions() {
  fill(byId('cautions'), cautionBox(forWork((texts(form).works ?? '').split(',').filter(Boolean))));
}

async function showNew() {
  const ahead = await get(`units/${part(unitId)}/ahead`);
  const { unit } = await get(`units/${part(unitId)}`);
  const { currency } = await get('planned-work', { unit: unitId });
  fill(byId('new-title'), 'Plan for ', named(unit.label));
  byId('advice').textContent = withDays(ahead.advice);
  byId('currency').textContent = currency;
  fill(byId('works'), Object.entries(WORKS).map(([value, text]) => element('label', {},
    element('input', { type: 'checkbox', name: 'works', value, checked: ahead.works.includes(value), onchange: showCautions }), text)));
  byId('unit').href = `../unit/?unit=${part(unitId)}`;
  byId('depot-field').hidden = true;
  byId('new').hidden = false;
  showCautions();
}

async function showDepots() {
  const { depots } = await get('depots');
  const now = asked.get('depot') ?? '';
  fill(byId('depot'), element('option', { value: '' }, 'all'), depots.map(({ name }) => element('option', { value: name, selected: name === now }, name)));
}

layFrame('planned', { withUnits: false });
byId('depot').addEventListener('change', () => location.assign(`?${new URLSearchParams({ depot: byId('depot').value })}`));
onSubmit(form, byId('problems'), async boxes => {
  showList(await post('planned-work', { boxes: { ...boxes, unit: unitId, id: planId } }));
  planId = newId();
  byId('done').textContent = 'Planned.';
});
(unitId ? showNew() : showDepots()).then(() => get('planned-work', query())).then(showList).catch(refusal => sayFailure(byId('failure'), refusal));

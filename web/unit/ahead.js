// What lies ahead of the unit and what is worth doing: sentences, and the ways on to the weighing, the plan and the owner's sheet.

import { element, fill, terms } from '../shared/dom.js';
import { part } from '../shared/api.js';
import { cautionBox } from '../shared/cautions.js';
import { dayText, withDays } from '../shared/words.js';

const planned = plans => plans.map(plan => element('li', {}, `${dayText(plan.planned_for)}: ${plan.work_text}`, plan.price ? `, ${plan.price.text}` : '',
  plan.note ? ['. ', element('bdi', {}, plan.note)] : ''));

/** Shows it in its place; `plans` is what is planned for the unit. */
export function showAhead(place, { unit, state }, ahead, plans) {
  const address = `unit=${part(unit.id)}`;
  fill(place, element('h2', { id: 'ahead-title' }, 'What lies ahead'),
    element('p', { class: 'sentence' }, withDays(ahead.advice)),
    ahead.option === 'keep' && state === 'act' ? element('p', {}, 'The readings are beyond the limit; by these prices a call for it does not pay for itself now. Whether comfort or a guest’s complaint weighs more is yours to say.') : '',
    ahead.settling ? element('p', {}, ahead.settling) : '',
    terms([['If nothing is done', withDays(ahead.limit)], ['Quitting', withDays(ahead.quitting)]]),
    plans.plans.length ? [element('h3', {}, 'Planned'), element('ul', {}, planned(plans.plans))] : '',
    cautionBox(ahead.cautions),
    element('div', { class: 'buttons' }, element('a', { class: 'button', href: `../weighing/?${address}` }, 'Keep, clean, repair or replace'),
      element('a', { class: 'button', href: `../sheet/?${address}` }, 'Owner’s sheet'),
      element('a', { class: 'button', href: `../planned/?${address}` }, 'Plan work')));
}

// What lies ahead of the unit and what is worth doing: sentences, and the ways on to the weighing, the plan and the owner's sheet.

import { element, fill, terms } from '../shared/dom.js';
import { part } from '../shared/api.js';
import { cautionBox } from '../shared/cautions.js';
import { dayText, withDays } from '../shared/words.js';

const FAULTY = ['act', 'drifting'];

const planned = plans => plans.map(plan => element('li', {}, `${dayText(plan.planned_for)}: ${plan.work_text}`, plan.price ? `, ${plan.price.text}` : '',
  plan.note ? ['. ', element('bdi', {}, plan.note)] : ''));

/** Shows it in its place; `plans` is what is planned for the unit. */
export function showAhead(place, { unit, state }, ahead, plans) {
  const address = `unit=${part(unit.id)}`;
  fill(place, element('h2', { id: 'ahead-title' }, 'What lies ahead'),
    terms([['If nothing is done', withDays(ahead.limit)], ['Quitting', withDays(ahead.quitting)]]),
    element('h3', {}, 'What pays now'),
    element('p', { class: 'sentence' }, withDays(ahead.advice)),
    ahead.option === 'keep' && FAULTY.includes(state) ? element('p', {}, 'What the readings say still stands. By these prices a call for it alone does not pay for itself now; whether comfort or a guest’s complaint weighs more is yours to say.') : '',
    ahead.settling ? element('p', {}, ahead.settling) : '',
    plans.plans.length ? [element('h3', {}, 'Planned'), element('ul', {}, planned(plans.plans))] : '',
    cautionBox(ahead.cautions),
    element('div', { class: 'buttons' }, element('a', { class: 'button', href: `../weighing/?${address}` }, 'Keep, clean, repair or replace'),
      element('a', { class: 'button', href: `../sheet/?${address}` }, 'Owner’s sheet'),
      element('a', { class: 'button', href: `../planned/?${address}` }, 'Plan work')));
}

// The people with an account, for those who administer.

import { byId, element, fill, terms } from '../shared/dom.js';
import { get, part, post, remove } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { count } from '../shared/words.js';
import { depotsText, ROLES } from '../shared/people.js';

const form = byId('form');
const MAY = { technician: 'enters visits and units, corrects his own', manager: 'looks after all units of his depots', administrator: 'also people and settings; sees all depots' };
let depots = [];

function sayInvitation({ name, address, hours }) {
  fill(byId('done'), element('div', { class: 'problems', role: 'status', tabindex: '-1' }, element('h2', {}, `A link for ${name}`),
    element('p', {}, `Hand it to ${name} alone. It works once, for ${hours} hours, and is shown this once.`), element('p', {}, element('code', {}, address))));
  byId('done').firstChild.focus();
}

/** Does something and shows the people as they are then. */
async function step(doIt) {
  clearProblems(form, byId('problems'));
  fill(byId('done'));
  try {
    const answer = await doIt();
    show(answer.people ? answer : await get('people'));
    if (answer.address) sayInvitation(answer);
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }]);
  }
}

const roleChoices = (name, chosen) => Object.entries(MAY).map(([role, may]) => element('label', {},
  element('input', { type: 'radio', name, value: role, checked: role === chosen }), element('span', {}, ROLES[role], element('span', { class: 'hint' }, may))));

function depotChoices(name, seen) {
  const known = [...new Set([...depots, ...(seen ?? [])])];
  return [element('label', {}, element('input', { type: 'checkbox', name: `${name}-all`, value: 'yes', checked: !seen }), 'all depots'),
    known.map(depot => element('label', {}, element('input', { type: 'checkbox', name, value: depot, checked: seen?.includes(depot) }), depot))];
}

/** All depots when that is chosen, else those that are. */
const chosenDepots = data => (data.get('depot-all') ? undefined : data.getAll('depot'));

function changeForm(person) {
  const change = element('form', { novalidate: true }, element('fieldset', { class: 'field' }, element('legend', {}, 'Role'), element('div', { class: 'choices' }, roleChoices('role', person.role))),
    element('fieldset', { class: 'field' }, element('legend', {}, 'Sees'), element('div', { class: 'choices' }, depotChoices('depot', person.depots))),
    element('div', { class: 'buttons' }, element('button', { class: 'main' }, 'Change')));
  change.addEventListener('submit', event => {
    event.preventDefault();
    const data = new FormData(change);
    step(() => post(`people/${part(person.id)}`, { role: data.get('role'), depots: chosenDepots(data) }));
  });
  return element('details', {}, element('summary', {}, `Change what ${person.name} may do and see`), change);
}

const pressing = (text, doIt) => element('button', { type: 'button', onclick: () => step(doIt) }, text);

function personItem(person) {
  const at = `people/${part(person.id)}`;
  const where = [count(person.sessions, 'browser', 'browsers'), count(person.phones, 'phone', 'phones'), count(person.programs, 'program', 'programs')].join(', ');
  return element('li', { class: 'person' }, element('h2', {}, person.name),
    terms([['Role', ROLES[person.role]], ['Sees', depotsText(person.depots)], ['Account', !person.active ? 'closed' : person.has_password ? 'open' : 'no password chosen yet'],
      ['Signed in', person.active ? where : undefined]]),
    element('div', { class: 'buttons' }, person.active ? [pressing('A link to choose a password', () => post(`${at}/invitation`, {})),
      pressing('Sign out everywhere', () => remove(`${at}/sessions`)), pressing('Close the account', () => post(`${at}/closing`, {}))]
      : pressing('Open the account again', () => post(`${at}/reopening`, {}))),
    person.active ? changeForm(person) : '');
}

function show(page) {
  depots = page.depots;
  byId('open').hidden = page.defined;
  byId('open').textContent = 'Nobody can sign in and administer yet, so everything stands open on this machine. '
    + 'Once an administrator has chosen a password, nobody gets in without signing in.';
  fill(byId('people'), page.people.map(personItem));
  fill(byId('roles'), roleChoices('role', page.defined ? 'technician' : 'administrator'));
  fill(byId('depots'), depotChoices('depot'));
}

function add(event) {
  event.preventDefault();
  const data = new FormData(form);
  step(async () => {
    const made = await post('people', { name: data.get('name'), role: data.get('role'), depots: chosenDepots(data) });
    byId('name').value = '';
    return made;
  });
}

layFrame('people', { withUnits: false });
form.addEventListener('submit', add);
get('people').then(show).catch(refusal => sayFailure(byId('failure'), refusal));

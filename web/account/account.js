// One's own account: where one is signed in, the password, programs.

import { byId, element, fill } from '../shared/dom.js';
import { get, part, post, remove } from '../shared/api.js';
import { offerToShow } from '../shared/door.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { depotsText, KINDS, localMoment, RIGHTS, ROLES } from '../shared/people.js';

const forms = [byId('password-form'), byId('program-form')];

/** Does something that is answered with the account as it is then. */
async function step(form, doIt, said = '') {
  for (const each of forms) clearProblems(each, byId('problems'));
  fill(byId('done'));
  try {
    show(await doIt());
    if (said) fill(byId('done'), element('p', { class: 'sentence' }, said));
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }]);
  }
}

function sessionRow({ id, kind, label, began, used, here }) {
  const name = here ? `${label} (here)` : label;
  return element('tr', {}, element('td', {}, KINDS[kind]), element('th', { scope: 'row' }, name), element('td', {}, localMoment(began)), element('td', {}, localMoment(used)),
    element('td', {}, element('button', { type: 'button', 'aria-label': `Sign out ${name}`,
      onclick: () => (here ? leave('session') : step(forms[0], () => remove(`account/sessions/${part(id)}`), 'It is signed out.')) }, kind === 'phone' && !here ? 'Cut off' : 'Sign out')));
}

function programRow({ id, name, most, depots, ends, used }) {
  return element('tr', {}, element('th', { scope: 'row' }, name), element('td', {}, RIGHTS[most]), element('td', {}, depots ? depots.join(', ') : 'all of yours'),
    element('td', {}, localMoment(ends)), element('td', {}, used ? localMoment(used) : 'never'),
    element('td', {}, element('button', { type: 'button', 'aria-label': `Withdraw ${name}`,
      onclick: () => step(forms[1], () => remove(`account/programs/${part(id)}`), 'The key opens nothing any more.') }, 'Withdraw')));
}

const table = (headings, rows) => element('table', {}, element('thead', {}, element('tr', {},
  headings.map(heading => (heading ? element('th', { scope: 'col' }, heading) : element('td', {}))))), element('tbody', {}, rows));

function show({ who, sessions, programs }) {
  byId('account').hidden = false;
  byId('name').textContent = who.name;
  byId('username').value = who.name;
  byId('role').textContent = `${ROLES[who.role]}, sees ${depotsText(who.depots)}.`;
  fill(byId('sessions'), table(['What', 'Called', 'Since', 'Last used', ''], sessions.map(sessionRow)));
  fill(byId('programs'), programs.length ? table(['Program', 'May', 'Depots', 'Ends', 'Last used', ''], programs.map(programRow))
    : element('p', { class: 'quiet' }, 'None.'));
}

async function leave(what) {
  await remove(what).catch(() => undefined);
  location.assign('../sign-in/');
}

function changePassword(event) {
  event.preventDefault();
  step(forms[0], async () => {
    const account = await post('account/password', { password: byId('password').value, new_password: byId('new_password').value });
    forms[0].reset();
    return account;
  }, 'Your password is changed, and every other browser and phone is signed out.');
}

function makeProgram(event) {
  event.preventDefault();
  fill(byId('made'));
  step(forms[1], async () => {
    const data = new FormData(forms[1]);
    const depots = data.getAll('depot');
    const { key } = await post('account/programs', { password: data.get('password'), name: data.get('name'), most: data.get('most'),
      days: Number(data.get('days')) || undefined, depots: depots.length ? depots : undefined });
    forms[1].reset();
    fill(byId('made'), element('p', {}, 'Copy the key now; it is shown this once.'), element('p', {}, element('code', {}, key)),
      element('p', { class: 'quiet' }, 'A program sends it as “Authorization: Bearer” and the key.'));
    return get('account');
  });
}

async function lay() {
  const session = await get('session');
  if (session.open) {
    throw Object.assign(new Error('open'), { problems: [{ limit: 'Nobody has an account here yet.', remedy: 'Everything stands open on this machine; add people on the page People.' }] });
  }
  const yard = await get('yard');
  fill(byId('most'), session.rights.filter(right => right !== 'administer').map((right, i) => element('label', {},
    element('input', { type: 'radio', name: 'most', value: right, checked: i === 0 }), RIGHTS[right])));
  byId('program-depots-field').hidden = !yard.depots.length;
  fill(byId('program-depots'), yard.depots.map(depot => element('label', {}, element('input', { type: 'checkbox', name: 'depot', value: depot }), depot)));
  show(await get('account'));
}

layFrame('account', { withUnits: false });
offerToShow('show', 'password', 'new_password');
byId('password-form').addEventListener('submit', changePassword);
byId('program-form').addEventListener('submit', makeProgram);
byId('everywhere').addEventListener('click', () => leave('account/sessions'));
lay().catch(refusal => sayFailure(byId('failure'), refusal));

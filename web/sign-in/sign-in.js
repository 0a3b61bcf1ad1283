// Signing in, and back to where the reader wanted to go.

import { byId } from '../shared/dom.js';
import { get, signIn } from '../shared/api.js';
import { layDoor, offerToShow } from '../shared/door.js';
import { clearProblems, showProblems } from '../shared/problems.js';
import { rememberTechnician } from '../shared/reader.js';

const PAGE = /^[a-z][a-z-]*\/(\?[^#]*)?(#.*)?$/;

/** The page to go to: one of this program's own folders, whatever the address says. */
function wanted() {
  const to = new URLSearchParams(location.search).get('to') ?? '';
  return PAGE.test(to) && !to.startsWith('sign-in/') ? `../${to}` : '../yard/';
}

async function send(event) {
  event.preventDefault();
  const form = byId('form');
  clearProblems(form, byId('problems'));
  byId('send').disabled = true;
  try {
    const who = await signIn({ name: byId('name').value, password: byId('password').value, phone: byId('phone').checked, label: byId('label').value });
    rememberTechnician(who.name);
    location.replace(wanted());
  } catch (refusal) {
    byId('password').value = '';
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }]);
  } finally {
    byId('send').disabled = false;
  }
}

/** Whoever is in already, or needs not sign in, goes straight on. */
async function goOn() {
  const who = await get('session').catch(() => undefined);
  if (who?.open || who?.signed_in) location.replace(wanted());
}

layDoor();
offerToShow('show', 'password');
byId('phone').addEventListener('change', event => { byId('label-field').hidden = !event.target.checked; });
byId('form').addEventListener('submit', send);
goOn();

// Choosing a password by a link that works once. Its key stands behind the # and is sent in the body only.

import { byId, element, fill } from '../shared/dom.js';
import { post } from '../shared/api.js';
import { layDoor, offerToShow } from '../shared/door.js';
import { clearProblems, showProblems } from '../shared/problems.js';

const key = location.hash.slice(1);
const form = byId('form');

function say(refusal) {
  showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }]);
}

async function send(event) {
  event.preventDefault();
  clearProblems(form, byId('problems'));
  byId('send').disabled = true;
  try {
    await post('invitation', { key, password: byId('password').value });
    form.hidden = true;
    history.replaceState(null, '', location.pathname);
    byId('title').textContent = 'Your password is kept';
    fill(byId('done'), element('div', { class: 'buttons' }, element('a', { class: 'button main', href: '../sign-in/' }, 'Sign in')));
  } catch (refusal) {
    say(refusal);
  } finally {
    byId('send').disabled = false;
  }
}

async function lay() {
  const { name } = await post('invitation', { key });
  byId('whose').textContent = `You stand in the record as ${name}; sign in by this name.`;
  byId('name').value = name;
  form.hidden = false;
}

layDoor();
offerToShow('show', 'password');
form.addEventListener('submit', send);
lay().catch(say);

// What every page has: the head with its links, the demo's mark, the foot with the reader's choice of units.

import { byId, element, fill, folded, named } from './dom.js';
import { chooseSystem, demoKnown, rememberDemo, rememberTechnician, system, technician } from './reader.js';
import { get, remove } from './api.js';
import { dropEverything, dropUnits, outbox } from './pocket.js';
import { layPaper } from './paper.js';
import { isWaiting, sendByItself } from './sending.js';

const PAGES = [['yard', 'Yard'], ['visit', 'New visit'], ['round', 'Rounds'], ['season', 'Season'], ['new-unit', 'New unit'], ['import', 'Files'], ['phone', 'On this phone']];
/** So many links stay in sight on a phone. */
const FIRST_PAGES = 3;

function head(current) {
  const links = PAGES.map(([folder, title]) =>
    element('a', { href: `../${folder}/`, 'aria-current': folder === current ? 'page' : undefined }, title));
  return element('header', { class: 'head' }, element('div', {}, element('a', { class: 'name', href: '../yard/' }, 'Longsummer'),
    element('nav', { class: 'folds', 'aria-label': 'Pages' }, folded(links, (link, place) => place < FIRST_PAGES))));
}

/** A choice of units that tells everybody on the page when it changes. */
export function unitsChoice(name = 'system') {
  const choices = [['us', '°F, feet'], ['si', '°C, metres']].map(([value, text]) => element('label', {},
    element('input', { type: 'radio', name, value, checked: system() === value, onchange: () => {
      chooseSystem(value);
      document.dispatchEvent(new CustomEvent('units-chosen', { detail: value }));
    } }), text));
  return element('fieldset', { class: 'units-choice' }, element('legend', {}, 'Units'), element('div', { class: 'choices brief' }, choices));
}

const SET_UP = [['planned', 'Planned work'], ['prices', 'Prices'], ['depots', 'Depots'], ['instruments', 'Instruments'], ['signs', 'What each fault shows'], ['business', 'Your business'], ['reading', 'How things are shown']];

function setUp(current) {
  return element('nav', { class: 'foot-links', 'aria-label': 'Set up' }, SET_UP.map(([folder, title]) =>
    element('a', { href: `../${folder}/`, 'aria-current': folder === current ? 'page' : undefined }, title)));
}

function foot(current, withUnits) {
  return element('footer', { class: 'foot' }, element('div', {}, withUnits ? unitsChoice('system-foot') : '', setUp(current),
    element('p', {}, 'Advice from readings, not an inspection. Local codes and the maker’s manual come first.')));
}

/** What this device keeps goes with whoever signs out; what still waits to be sent stays, and he is asked first. */
async function signOut() {
  const waiting = (await outbox().catch(() => [])).filter(isWaiting).length;
  if (waiting && !confirm(`${waiting} on this device still wait to be sent. They stay here, and are sent by whoever signs in next. Sign out all the same?`)) return;
  await (waiting ? dropUnits() : dropEverything()).catch(() => undefined);
  await remove('session').catch(() => undefined);
  location.assign('../sign-in/');
}

/** Who is signed in, his account and the way out; for those who administer, the people and what was changed. */
function showReader(who) {
  if (who.rights.includes('administer')) {
    document.querySelector('.foot > div').prepend(element('nav', { class: 'foot-links', 'aria-label': 'Administration' },
      element('a', { href: '../people/' }, 'People'), element('a', { href: '../changes/' }, 'What was changed')));
  }
  if (!who.signed_in) return;
  if (!technician()) rememberTechnician(who.name);
  document.querySelector('.head > div').append(element('div', { class: 'reader' }, element('a', { href: '../account/' }, named(who.name)),
    element('button', { type: 'button', class: 'quiet', onclick: signOut }, 'Sign out')));
}

function markDemo(mayRemove) {
  document.querySelector('.head').after(element('p', { class: 'demo' }, element('span', {}, 'Demo fleet, all invented. ',
    mayRemove ? element('a', { href: '../import/#demo' }, 'Remove it') : '')));
}

/** What the server says of itself and of the reader; without a signal, whether this was the demo when it was last heard. */
async function showHouse() {
  const house = await get('house').catch(() => undefined);
  if (!house) {
    if (demoKnown()) markDemo(false);
    return;
  }
  showReader(house.who);
  layPaper(house.business);
  rememberDemo(house.demo);
  if (house.demo) markDemo(house.who.rights.includes('administer'));
}

/** Says on every page how much waits on this device to be sent. */
async function showWaiting() {
  const items = await outbox().catch(() => []);
  const waiting = items.filter(isWaiting).length;
  fill(byId('waiting'), waiting ? element('a', { href: '../phone/' }, waiting === 1 ? '1 entry waits to be sent' : `${waiting} entries wait to be sent`) : '');
}

/** Lets the pages open without a signal; only where the browser trusts the address. */
function keepPages() {
  navigator.serviceWorker?.register('../service-worker.js', { scope: '../' }).catch(() => undefined);
}

/** Lays head and foot around the page's main part; `current` is the page's folder. */
export function layFrame(current, { withUnits = true } = {}) {
  document.body.prepend(element('a', { class: 'skip', href: '#main' }, 'To the content'), head(current));
  document.body.append(foot(current, withUnits));
  showHouse();
  keepPages();
  document.querySelector('.head').after(element('p', { id: 'waiting', class: 'waiting no-print', role: 'status' }));
  document.addEventListener('outbox-changed', showWaiting);
  showWaiting();
  sendByItself();
}

/** Says what went wrong where the page would have stood, and offers to try again. */
export function sayFailure(target, refusal) {
  const problems = refusal.problems ?? [{ limit: 'Something on this page failed.', remedy: 'Load the page again.' }];
  fill(target, element('div', { class: 'problems', role: 'alert' }, element('h2', {}, 'That did not work'),
    problems.map(problem => element('p', {}, `${problem.limit} ${problem.remedy}`)),
    element('div', { class: 'buttons' }, element('button', { type: 'button', onclick: () => location.reload() }, 'Try again'),
      element('a', { class: 'button', href: '../yard/' }, 'To the yard'))));
  if (!refusal.problems) throw refusal;
}

export const main = () => byId('main');

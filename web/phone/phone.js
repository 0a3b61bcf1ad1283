// What this phone keeps: visits that wait, units that were taken along. The start page of the installed app.

import { byId, element, fill } from '../shared/dom.js';
import { get } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { depotsKnown } from '../shared/judging.js';
import { dropFleet, fleetKept, keepFleet, keepForGood, outbox, unitsKept } from '../shared/pocket.js';
import { isWaiting, sendAll } from '../shared/sending.js';
import { count, momentText } from '../shared/words.js';
import { askWhich } from '../visit/which.js';
import { itemToSend, itemToldOtherwise } from './items.js';

const localTime = milliseconds => momentText(new Date(milliseconds - new Date(milliseconds).getTimezoneOffset() * 60_000).toISOString());

async function showItems() {
  const items = await outbox();
  const waiting = items.filter(isWaiting);
  const told = items.filter(item => item.server_said);
  byId('to-send').hidden = !waiting.length;
  byId('told').hidden = !told.length;
  fill(byId('items'), waiting.map(item => itemToSend(item, showItems)));
  fill(byId('told-items'), told.map(item => itemToldOtherwise(item, showItems)));
}

async function sendNow() {
  byId('send').disabled = true;
  byId('sent').textContent = 'Sending …';
  await sendAll(true);
  await showItems();
  const left = (await outbox()).filter(isWaiting);
  byId('sent').textContent = left.length ? `${count(left.length, 'entry is', 'entries are')} still here: ${left[0].problem?.problems[0]?.limit ?? ''}` : '';
  byId('send').disabled = false;
}

async function showKept() {
  const [fleet, units] = await Promise.all([fleetKept(), unitsKept()]);
  const visits = units.reduce((sum, row) => sum + row.visits.length, 0);
  byId('kept-now').textContent = units.length ? `${count(units.length, 'unit', 'units')} with ${count(visits, 'visit', 'visits')} are kept here`
    + `${fleet ? `, as the server knew them on ${localTime(fleet.as_of_ms)}` : ', those you opened'}.`
    : 'No unit is kept here yet. Without a signal only units that are kept here can be judged.';
  byId('leave').hidden = !fleet;
}

async function showDepots() {
  const [depots, fleet] = await Promise.all([depotsKnown(), fleetKept()]);
  const chosen = new Set((fleet?.depots ?? []).map(depot => depot.name));
  fill(byId('depots'), depots.length ? depots.map(({ name, units }) => element('label', {},
    element('input', { type: 'checkbox', name: 'depot', value: name, checked: chosen.has(name) }), `${name || 'no depot'} (${units})`))
    : element('p', {}, 'The depots are not known here; there must be a signal to choose them.'));
}

async function take(event) {
  event.preventDefault();
  const names = new FormData(byId('depots-form')).getAll('depot');
  if (!names.length) {
    byId('kept-now').textContent = 'Choose at least one depot.';
    return;
  }
  byId('take').disabled = true;
  byId('kept-now').textContent = 'Taking along …';
  try {
    const depots = (await depotsKnown()).filter(depot => names.includes(depot.name));
    const fleet = await get(`offline/fleet`, { depot: names });
    await keepFleet(fleet, depots).catch(failure => {
      throw { problems: [{ limit: `This phone could not keep them (${failure.name}).`, remedy: 'Free some storage, or choose fewer depots.' }] };
    });
    await showKept();
    const forGood = await keepForGood();
    byId('for-good').textContent = forGood ? 'The browser agreed not to clear this when space runs short.'
      : 'The browser may clear this when space runs short or when it is not opened for weeks; installing the app helps.';
  } catch (refusal) {
    byId('kept-now').textContent = (refusal.problems ?? [{ limit: 'That failed.', remedy: 'Try again.' }]).map(({ limit, remedy }) => `${limit} ${remedy}`).join(' ');
  } finally {
    byId('take').disabled = false;
  }
}

async function leave() {
  await dropFleet();
  await Promise.all([showKept(), showDepots()]);
}

layFrame('phone');
byId('untrusted').hidden = window.isSecureContext && 'serviceWorker' in navigator;
byId('send').addEventListener('click', sendNow);
byId('depots-form').addEventListener('submit', take);
byId('leave').addEventListener('click', leave);
document.addEventListener('outbox-changed', () => showItems().catch(() => undefined));
Promise.all([showItems(), showKept(), showDepots(), askWhich(byId('which'))]).catch(failure => sayFailure(byId('failure'), failure.problems ? failure
  : { problems: [{ limit: `This browser keeps nothing (${failure.name}: ${failure.message}).`, remedy: 'Leave its private mode, or allow it to store site data.' }] }));

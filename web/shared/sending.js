// Sends what waits on this device, each under the id it was given here: sending twice stores once. What the server cannot take stays
// here with the reason, until somebody decides.

import { get, part, post, Refusal } from './api.js';
import { dropItem, keepItem, keepUnit, outbox, unitKept, unitsKept } from './pocket.js';

const PATIENCE = 15_000;
const EVERY = 60_000;

export const isWaiting = item => item.state !== 'sent';

function address(item) {
  if (item.kind === 'unit') return `offline/units/${part(item.unit_id)}`;
  return item.corrects ? `visits/${part(item.corrects)}/correction` : `units/${part(item.unit_id)}/visits`;
}

const body = item => (item.kind === 'unit' ? { boxes: item.boxes, known: Boolean(item.known) } : { id: item.id, boxes: item.boxes });

/** The server's words differ from those that were said here, because it knows more of the unit or of the fleet. */
const saysOtherwise = (item, verdict) => Boolean(item.said && verdict && verdict.sentence !== item.said.sentence);

async function noteSent(item, answer) {
  const said = answer.verdict && { state: answer.verdict.state, sentence: answer.verdict.sentence };
  await keepItem({ ...item, state: 'sent', problem: undefined, stored_before: answer.stored_before,
    server_said: saysOtherwise(item, answer.verdict) ? said : undefined });
}

/** No answer, a failure, nobody signed in, or too much at once: nothing is wrong with what waits. */
const mayGoLater = ({ status }) => [0, 401, 429].includes(status) || status >= 500;

async function noteTrouble(item, refusal) {
  const problem = { status: refusal.status, problems: refusal.problems, unit_id: refusal.answer?.unit_id, label: refusal.answer?.label };
  await keepItem({ ...item, state: mayGoLater(refusal) ? 'waiting' : 'stuck', problem });
}

/**
 * Sends one item that is kept here.
 * @returns {sent, answer} or {refusal}; status 0 means that nothing answered
 */
export async function sendItem(item) {
  try {
    const answer = await post(address(item), body(item), { signal: AbortSignal.timeout(PATIENCE) });
    await noteSent(item, answer).catch(() => undefined);
    await refreshUnit(item.unit_id).catch(() => undefined);
    return { sent: true, answer };
  } catch (failure) {
    const refusal = failure.problems ? failure : new Refusal(0, [{ field: '', given: '', limit: 'Longsummer did not answer.',
      remedy: 'It is tried again by itself.' }]);
    await noteTrouble(item, refusal).catch(() => undefined);
    return { refusal };
  }
}

/** Takes a unit's record from the server, and forgets the items that are in it. */
export async function refreshUnit(unitId, options = {}) {
  const { units: [row], closings, as_of_ms: asOf } = await get(`offline/units/${part(unitId)}`, {}, options);
  const before = await unitKept(unitId).catch(() => undefined);
  const fresh = { ...row, closings, as_of_ms: asOf, of_depot: before?.of_depot };
  await keepUnit(fresh).catch(() => undefined);
  await forgetKnown(fresh);
  return fresh;
}

async function forgetKnown(row) {
  const known = new Set(row.visits.map(visit => visit.id));
  const items = await outbox().catch(() => []);
  for (const item of items) {
    const there = item.kind === 'unit' ? item.unit_id === row.unit_id : known.has(item.id);
    if (item.state === 'sent' && there && !item.server_said) await dropItem(item.id);
  }
}

async function sendInOrder(again) {
  const items = (await outbox()).filter(item => isWaiting(item) && (again || item.state !== 'stuck'));
  items.sort((a, b) => (a.kind === 'unit' ? 0 : 1) - (b.kind === 'unit' ? 0 : 1) || a.saved_at - b.saved_at);
  const held = new Set();
  for (const item of items) {
    if (held.has(item.unit_id)) continue;
    const { refusal } = await sendItem(item);
    if (refusal && item.kind === 'unit') held.add(item.unit_id);
    if (refusal && mayGoLater(refusal)) return;
  }
}

let sending;

/** Sends all that waits, one page at a time. @param again those that were refused too */
export function sendAll(again = false) {
  const work = () => sendInOrder(again);
  sending ??= (navigator.locks ? navigator.locks.request('longsummer-sending', work) : work()).catch(() => undefined)
    .finally(() => { sending = undefined; });
  return sending;
}

/** Sends whenever there may be a signal again: now, when the device says so, when the page is looked at, and every minute. */
export function sendByItself() {
  const attempt = () => sendAll().catch(() => undefined);
  window.addEventListener('online', attempt);
  document.addEventListener('visibilitychange', () => { if (!document.hidden) attempt(); });
  setInterval(attempt, EVERY);
  attempt();
}

/** What waits for one unit, in the order in which it was saved. */
export const waitingFor = async unitId => (await outbox().catch(() => [])).filter(item => item.unit_id === unitId && item.kind !== 'unit');

/** Gives visits that wait another unit, when two names turned out to be one machine. */
export async function moveItems(fromUnit, toUnit) {
  for (const item of await outbox()) {
    if (item.unit_id === fromUnit && item.kind !== 'unit' && isWaiting(item)) await keepItem({ ...item, unit_id: toUnit, state: 'waiting', problem: undefined });
  }
}

/** Units that this device added and the server does not have yet. */
export const unitsOfOurOwn = async () => (await unitsKept()).filter(row => row.own);

// One entry that waits, what keeps it here, and the ways to settle that. Nothing is dropped without being asked for by name.

import { element } from '../shared/dom.js';
import { get, newId, part } from '../shared/api.js';
import { dropItem, keepItem, unitKept } from '../shared/pocket.js';
import { moveItems, sendAll } from '../shared/sending.js';
import { momentText } from '../shared/words.js';

const button = (text, work, done) => element('button', { type: 'button', onclick: async event => {
  event.target.disabled = true;
  try {
    await work();
  } finally {
    await done();
  }
} }, text);

const resend = async (item, changes) => {
  await keepItem({ ...item, ...changes, problem: undefined, state: 'waiting' });
  if (changes.id && changes.id !== item.id) await dropItem(item.id);
  await sendAll();
};

/** The row that counts now in the place of one that was corrected, or nothing when it was withdrawn. */
async function rowInItsPlace(item) {
  const { visits } = await get(`units/${part(item.unit_id)}`);
  let row = visits.find(visit => visit.id === item.corrects);
  while (row && !row.counts) row = visits.find(visit => visit.id === row.marking?.other_id);
  return row;
}

async function putInItsPlace(item) {
  const row = await rowInItsPlace(item);
  await resend(item, { corrects: row?.id });
}

const correctTheStored = item => resend(item, { id: newId(), corrects: item.id,
  boxes: { ...item.boxes, reason: item.boxes.reason || 'changed on the phone after an earlier form of it had arrived' } });

async function enterUnitAgain(item) {
  const row = await unitKept(item.unit_id);
  await keepItem({ id: `unit ${item.unit_id}`, kind: 'unit', unit_id: item.unit_id, label: row.unit.label, boxes: row.boxes, known: true,
    saved_at: Date.now(), state: 'waiting' });
  await resend(item, {});
}

async function isTheSameMachine(item) {
  await moveItems(item.unit_id, item.problem.unit_id);
  await dropItem(item.id);
  await sendAll();
}

/** @returns the ways out, the safest first */
function waysOut(item, done) {
  const { status, problems = [] } = item.problem ?? {};
  const field = problems[0]?.field;
  const open = item.kind === 'visit' ? element('a', { class: 'button', href: `../visit/?unit=${part(item.unit_id)}&waiting=${part(item.id)}` }, 'Open it') : '';
  if (status === 401 || status === 403) return [element('a', { class: 'button', href: '../yard/' }, 'Sign in'), open];
  if (status === 409 && field === 'id') return [button('Send it as a correction of that one', () => correctTheStored(item), done), open];
  if (status === 409 && field === 'visit') return [button('Put mine in its place', () => putInItsPlace(item), done), open,
    element('a', { class: 'button', href: `../unit/?unit=${part(item.unit_id)}` }, 'Look at the record')];
  if (status === 409 && field === 'serial') return [button(`It is that machine: ${item.problem.label}`, () => isTheSameMachine(item), done),
    button('It is another machine', () => resend(item, { known: true }), done)];
  if (status === 404 && item.kind === 'visit' && !item.corrects) return [button('Enter the unit again from this phone', () => enterUnitAgain(item), done), open];
  return [open];
}

/** Gives the whole entry as a file before it is dropped. */
function fileOf(item) {
  const { id, kind, unit_id: unitId, label, corrects, boxes } = item;
  const text = JSON.stringify({ id, kind, unit_id: unitId, label, corrects, boxes }, null, 2);
  return element('a', { class: 'button', download: `${label}-${id}.json`.replace(/[^\p{L}\p{N}.-]+/gu, '_'),
    href: URL.createObjectURL(new Blob([text], { type: 'application/json' })) }, 'Save as a file');
}

const dropping = (item, done) => button('Drop it for good', async () => {
  if (window.confirm(`Drop this entry for ${item.label}? It was not sent and is nowhere else.`)) await dropItem(item.id);
}, done);

const reason = item => item.problem?.problems?.map(problem => `${problem.limit} ${problem.remedy}`).join(' ') ?? '';

const title = item => (item.kind === 'unit' ? 'new unit' : `${item.corrects ? 'correction, ' : ''}${momentText(item.boxes.visited_at)}`);

export function itemToSend(item, done) {
  const stuck = item.state === 'stuck';
  return element('li', { class: stuck ? 'stuck' : undefined }, element('p', {}, element('b', {}, item.label), ` · ${title(item)}`),
    item.said ? element('p', { class: 'quiet' }, item.said.sentence) : '', stuck ? element('p', {}, reason(item)) : '',
    element('div', { class: 'buttons' }, stuck ? [waysOut(item, done), fileOf(item), dropping(item, done)] : waysOut(item, done)));
}

export function itemToldOtherwise(item, done) {
  return element('li', {}, element('p', {}, element('b', {}, item.label), ` · ${title(item)}`),
    element('p', {}, `On the phone: ${item.said.sentence}`),
    element('p', {}, `By the server, which knows more of this unit or of the fleet: ${item.server_said.sentence}`),
    element('div', { class: 'buttons' }, element('a', { class: 'button', href: `../unit/?unit=${part(item.unit_id)}&visit=${part(item.id)}` }, 'See it on the chart'),
      button('Seen', () => dropItem(item.id), done)));
}

// The record as a table: also for those who cannot see a chart.

import { element, fill, named } from '../shared/dom.js';
import { momentText, recordedText, stateClass, stateText } from '../shared/words.js';

const WORK = { filter: 'filter', evaporator_coil: 'evaporator coil cleaned', condenser_coil: 'condenser coil cleaned', capacitor: 'capacitor replaced',
  divider: 'divider sealed', fan_motor: 'fan motor replaced', sealed_system: 'sealed circuit', unit_replaced: 'unit replaced' };

export const workText = work => work.map(word => WORK[word] ?? word).join(', ');

const MARKS = { withdrawn: 'withdrawn', corrected: 'corrected', correction: 'correction' };

/** Why a row no longer counts, or what it corrects; with who and when. */
export const markNodes = ({ kind, by, at, reason }) => [MARKS[kind], by ? [' by ', named(by)] : '', `, ${recordedText(at)}: `, named(reason)];

const HEADS = ['State', 'When', 'Split', 'Amps', 'Likely', 'Work done', 'By', 'Marks'];
/** State and marks are not struck through with the rest of a row that no longer counts. */
const PLAIN = [0, 7];

function rowOf(row, choose) {
  const at = !choose ? momentText(row.at) : element('a', { href: `#visit`, onclick: event => {
    event.preventDefault();
    choose(row.id);
  } }, momentText(row.at));
  const state = row.state ? element('span', { class: stateClass(row.state) }, stateText(row.state)) : 'does not count';
  const cells = [state, at, row.split?.text ?? '', row.amps?.text ?? '', row.condition === 'nothing wrong' ? '' : row.condition, workText(row.work),
    named(row.technician), row.marking ? markNodes(row.marking) : ''];
  return element('tr', { class: row.counts ? '' : 'struck' }, cells.map((cell, index) => element('td', { 'data-head': index > 1 ? HEADS[index] : undefined,
    class: PLAIN.includes(index) ? 'plain' : undefined }, cell)));
}

const FIRST = 25;

/** Latest first, each leading to its visit where `choose` is given; a long record shows its latest rows and, on asking, the rest. */
export function visitTable(visits, choose) {
  if (!visits.length) return element('p', { class: 'quiet' }, 'No visit yet.');
  const latest = [...visits].reverse();
  const body = element('tbody', {}, latest.slice(0, FIRST).map(row => rowOf(row, choose)));
  const table = element('table', { class: 'stack' }, element('caption', {}, 'Latest first; ± is two standard uncertainties, about 95 %.'),
    element('thead', {}, element('tr', {}, HEADS.map(head => element('th', { scope: 'col' }, head)))), body);
  if (latest.length <= FIRST) return table;
  const more = element('button', { type: 'button', onclick: () => {
    fill(body, latest.map(row => rowOf(row, choose)));
    body.rows[FIRST].querySelector('a')?.focus();
    more.remove();
  } }, `Show all ${latest.length} visits`);
  return [table, more];
}

// The record as a table: also for those who cannot see a chart.

import { element } from '../shared/dom.js';
import { momentText, stateClass, stateText } from '../shared/words.js';

const WORK = { filter: 'filter', evaporator_coil: 'evaporator coil cleaned', condenser_coil: 'condenser coil cleaned', capacitor: 'capacitor replaced',
  divider: 'divider sealed', fan_motor: 'fan motor replaced', sealed_system: 'sealed circuit', unit_replaced: 'unit replaced' };

export const workText = work => work.map(word => WORK[word] ?? word).join(', ');

const MARKS = { withdrawn: 'withdrawn', corrected: 'corrected', correction: 'correction' };

export function markText({ kind, by, reason }) {
  return `${MARKS[kind]}${by ? ` by ${by}` : ''}: ${reason}`;
}

function rowOf(row, choose) {
  const at = element('a', { href: `#visit`, onclick: event => {
    event.preventDefault();
    choose(row.id);
  } }, momentText(row.at));
  const state = row.state ? element('span', { class: stateClass(row.state) }, stateText(row.state)) : 'does not count';
  return element('tr', { class: row.counts ? '' : 'struck' }, element('td', { class: 'plain' }, state), element('td', {}, at),
    element('td', {}, row.split?.text ?? ''), element('td', {}, row.amps?.text ?? ''), element('td', {}, row.condition === 'nothing wrong' ? '' : row.condition),
    element('td', {}, workText(row.work)), element('td', {}, row.technician), element('td', { class: 'plain' }, row.marking ? markText(row.marking) : ''));
}

/** Latest first. */
export function visitTable(visits, choose) {
  if (!visits.length) return element('p', { class: 'quiet' }, 'No visit yet.');
  const heads = ['State', 'When', 'Split', 'Amps', 'Likely', 'Work done', 'By', 'Marks'];
  return element('table', {}, element('caption', {}, 'Latest first; ± is two standard uncertainties, about 95 %.'),
    element('thead', {}, element('tr', {}, heads.map(head => element('th', { scope: 'col' }, head)))),
    element('tbody', {}, [...visits].reverse().map(row => rowOf(row, choose))));
}

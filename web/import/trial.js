// What taking files in would do, row by row; nothing is changed yet.

import { element } from '../shared/dom.js';
import { MEANINGS } from './meanings.js';
import { count } from '../shared/words.js';

const BECOMES = { refused: 'refused', changed: 'would change', new: 'new', same: 'stay as they are' };
const quoted = text => (text === '' ? 'nothing' : `“${text}”`);

function what(row) {
  if (row.becomes === 'changed') {
    return element('ul', { class: 'plain-list' }, row.changes.map(change => element('li', {}, element('strong', {}, MEANINGS[change.field] ?? change.field), ` from ${quoted(change.from)} to ${quoted(change.to)}`)));
  }
  return element('ul', { class: 'plain-list' }, row.problems.map(problem => element('li', {}, problem.field ? [element('strong', {}, problem.field), ': '] : '',
    problem.given ? `“${problem.given}” is given. ` : '', problem.remedy)));
}

function table(becomes, rows, all) {
  return element('details', { open: becomes === 'refused' || becomes === 'changed' }, element('summary', {}, `${all.toLocaleString()} ${BECOMES[becomes]}`),
    element('div', { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': `Rows: ${BECOMES[becomes]}` }, element('table', {},
      rows.length < all ? element('caption', {}, `The first ${rows.length} of ${all.toLocaleString()}.`) : '',
      element('thead', {}, element('tr', {}, ['Row', 'What', 'Then'].map(title => element('th', { scope: 'col' }, title)))),
      element('tbody', {}, rows.map(row => element('tr', {}, element('td', {}, `${row.file}${row.row ? `, row ${row.row}` : ''}`), element('td', {}, row.what),
        element('td', {}, becomes === 'refused' || becomes === 'changed' ? what(row) : becomes === 'new' ? 'would be new' : 'stays as it is')))))));
}

/** @param take takes the files in */
export function showTrial(view, take) {
  const { refused, changed, new: fresh, same } = view.counts;
  const sentence = refused ? `Nothing can be taken yet: ${count(refused, 'row has', 'rows have')} to be put right in the file.`
    : changed + fresh ? `${fresh.toLocaleString()} new, ${changed.toLocaleString()} would change, ${same.toLocaleString()} stay as they are. Nothing is changed yet.`
      : `All ${same.toLocaleString()} rows are there already; there is nothing to take.`;
  return element('section', { id: 'trial' }, element('h2', { tabindex: '-1' }, 'What would happen'), element('p', { class: 'sentence' }, sentence),
    view.remarks.length ? element('ul', {}, view.remarks.map(remark => element('li', {}, remark))) : '',
    !refused && changed + fresh ? element('div', { class: 'buttons' }, element('button', { type: 'button', class: 'main', onclick: take }, 'Take these files')) : '',
    Object.keys(BECOMES).filter(becomes => view.counts[becomes]).map(becomes => table(becomes, view.rows.filter(row => row.becomes === becomes), view.counts[becomes])));
}

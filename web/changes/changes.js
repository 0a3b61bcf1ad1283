// The journal, latest first.

import { byId, element, fill } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { localMoment } from '../shared/people.js';

const page = new URLSearchParams(location.search).get('page');
const said = text => (text === '' ? 'nothing' : text);

function difference({ column, before, after }, event) {
  const name = column.replace(/_hash$/, '').replaceAll('_', ' ');
  if (column.endsWith('_hash')) return element('li', {}, `${name}: another`);
  return element('li', {}, event === 'removed' ? `${name}: ${said(before)}` : `${name}: ${said(before)} → ${said(after)}`);
}

function row({ at, who, way, about, about_id: id, name, unit_id: unit, event, columns }) {
  const what = [about.replaceAll('_', ' '), ' ', unit ? element('a', { href: `../unit/?unit=${part(unit)}` }, unit) : name ?? id];
  return element('tr', {}, element('td', { class: 'number' }, localMoment(at)), element('td', {}, who, element('span', { class: 'hint' }, way)), element('td', {}, what),
    element('td', {}, event, columns.length ? element('ul', {}, columns.map(each => difference(each, event))) : ''));
}

function show({ changes, page: number, pages }) {
  fill(byId('changes'), changes.length ? element('table', { class: 'stack' }, element('thead', {}, element('tr', {}, ['When', 'Who', 'What', 'What happened'].map(heading =>
    element('th', { scope: 'col' }, heading)))), element('tbody', {}, changes.map(row))) : element('p', { class: 'quiet' }, 'Nothing was changed yet.'));
  fill(byId('pager'), number > 1 ? element('a', { class: 'button', href: `?page=${number - 1}`, rel: 'prev' }, 'Later changes') : '',
    number < pages ? element('a', { class: 'button', href: `?page=${number + 1}`, rel: 'next' }, 'Earlier changes') : '');
}

layFrame('changes', { withUnits: false });
get('changes', { page }).then(show).catch(refusal => sayFailure(byId('failure'), refusal));

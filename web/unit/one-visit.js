// One visit of the record: its conditions, what was expected and why, and the way to correct or withdraw it.

import { element, fill, named, terms } from '../shared/dom.js';
import { get, newId, part, post } from '../shared/api.js';
import { sayFailure } from '../shared/frame.js';
import { onSubmit } from '../shared/form.js';
import { technician } from '../shared/reader.js';
import { READING_NAMES } from '../shared/readings.js';
import { strip } from '../shared/strip.js';
import { dayText, momentText, stateClass, stateText } from '../shared/words.js';
import { visitPhotos } from './photos.js';
import { markNodes, workText } from './visit-table.js';

const CHOICES = [['supply_at', 'Supply read at'], ['ambient_at', 'Outdoor air read at'], ['fan_speed', 'Fan'], ['power_source', 'Power'],
  ['filter_condition', 'Filter as found'], ['coil_condition', 'Condenser coil as found'], ['iced_coil', 'Coil iced'], ['volts_off', 'Volts with the unit off']];

const choiceText = word => word?.replaceAll('_', ' ');

function against(name, judged) {
  if (!judged.expected) return judged.measured ? element('p', {}, `${name}: ${judged.text}; nothing can be expected of it here.`) : '';
  return element('div', {}, element('h3', {}, name), element('p', {}, judged.text), strip(judged, name));
}

function budget(name, judged) {
  if (!judged.budget.length) return '';
  const heads = ['What is uncertain', 'Kind', 'By', `Effect on the ${name.toLowerCase()}`, 'Share'];
  return element('details', {}, element('summary', {}, `Why ± ${judged.expanded.text} on the expected ${name.toLowerCase()}`),
    element('div', { class: 'scroll' }, element('table', {},
      element('caption', {}, 'Standard uncertainties (k = 1), combined as the root of the sum of squares; the ± is twice that.'),
      element('thead', {}, element('tr', {}, heads.map(head => element('th', { scope: 'col' }, head)))),
      element('tbody', {}, judged.budget.map(line => element('tr', {}, element('td', {}, line.name), element('td', {}, line.source),
        element('td', { class: 'figure' }, line.input), element('td', { class: 'figure' }, line.effect),
        element('td', { class: 'figure' }, `${line.share_percent.toFixed(0)} %`)))))));
}

function withdrawForm(visitId) {
  const problems = element('div');
  const form = element('form', { class: 'withdraw', novalidate: true }, problems,
    element('div', { class: 'field' }, element('label', { for: 'by' }, 'Who you are'), element('input', { type: 'text', id: 'by', name: 'by', value: technician() })),
    element('div', { class: 'field' }, element('label', { for: 'reason' }, 'Why it should not count'), element('input', { type: 'text', id: 'reason', name: 'reason' })),
    element('button', {}, 'Withdraw this visit'));
  onSubmit(form, problems, async boxes => {
    await post(`visits/${part(visitId)}/withdrawal`, boxes);
    location.reload();
  });
  return element('details', { class: 'no-print' }, element('summary', {}, 'Withdraw'),
    element('p', { class: 'quiet' }, 'The row stays in the record and is marked; it no longer counts.'), form);
}

/** For a visit that was recorded on the wrong unit: front and rear mixed up. */
function otherUnitForm(visitId, unit) {
  const problems = element('div');
  const select = element('select', { id: 'other_unit', name: 'other_unit' }, element('option', { value: '' }, 'choose'));
  const form = element('form', { class: 'withdraw', novalidate: true }, problems,
    element('div', { class: 'field' }, element('label', { for: 'other_unit' }, 'Whose it was'), select),
    element('div', { class: 'field' }, element('label', { for: 'other-by' }, 'Who you are'), element('input', { type: 'text', id: 'other-by', name: 'by', value: technician() })),
    element('div', { class: 'field' }, element('label', { for: 'other-reason' }, 'How you know'), element('input', { type: 'text', id: 'other-reason', name: 'reason' })),
    element('button', {}, 'Give the visit to that unit'));
  onSubmit(form, problems, async boxes => {
    const { unit_id: other } = await post(`visits/${part(visitId)}/other-unit`, { boxes: { ...boxes, new_id: newId() } });
    location.assign(`?unit=${part(other)}`);
  });
  const details = element('details', { class: 'no-print' }, element('summary', {}, 'It was another unit’s'),
    element('p', { class: 'quiet' }, 'The visit goes, as it was typed, to the unit whose it was; here it stays as a marked row.'), form);
  details.addEventListener('toggle', async () => {
    if (!details.open || select.options.length > 1) return;
    const { neighbours } = await get(`units/${part(unit.id)}/form`).catch(() => ({ neighbours: [] }));
    select.append(...neighbours.map(({ id, label, serial }) => element('option', { value: id }, serial ? `${label} (serial ${serial})` : label)));
  });
  return details;
}

function said(verdict) {
  return [element('p', {}, element('span', { class: stateClass(verdict.state) }, stateText(verdict.state))),
    element('p', { class: 'sentence' }, verdict.sentence),
    verdict.findings.length ? element('ul', {}, verdict.findings.map(finding => element('li', {}, finding.text))) : '',
    verdict.before_and_after ? element('p', {}, verdict.before_and_after) : '',
    element('div', { class: 'against' }, against('Split', verdict.split), against('Amps', verdict.amps)),
    budget('Split', verdict.split), budget('Amps', verdict.amps),
    verdict.reasons.length ? element('details', {}, element('summary', {}, 'What speaks for and against'),
      element('ul', {}, verdict.reasons.map(({ day, text }) => element('li', {}, `${dayText(day)}: ${text}`)))) : '',
    verdict.closing ? element('p', { class: 'quiet small' }, `Judged from this unit’s earlier visits and what was learned across units up to ${dayText(verdict.closing)}.`) : ''];
}

/** Shows a visit in its place; `page` is the unit's page. */
export async function showVisit(target, visitId, page) {
  const row = page.visits.find(one => one.id === visitId);
  try {
    const { unit, visit, verdict } = await get(`visits/${part(visitId)}`);
    fill(target, element('h2', {}, `Visit of ${momentText(visit.boxes.visited_at)}`),
      row?.marking ? element('p', {}, element('strong', {}, markNodes(row.marking)), visit.counts ? '' : '. It no longer counts.') : '',
      verdict ? said(verdict) : '',
      element('h3', {}, 'As read'),
      terms([...Object.entries(READING_NAMES).map(([name, [term]]) => [term, visit.shown[name]?.text]), ...CHOICES.map(([name, term]) => [term, choiceText(visit.boxes[name])]),
        ['Work done', row ? workText(row.work) : ''], ['By', named(visit.boxes.technician)], ['Instruments', visit.instruments.text],
        ['Note', visit.boxes.notes && element('span', { dir: 'auto', class: 'as-written' }, visit.boxes.notes)]]),
      visitPhotos(page.photos, page.visits, visitId),
      visit.counts ? [element('div', { class: 'buttons' },
        element('a', { class: 'button', href: `../visit/?unit=${part(unit.id)}&correct=${part(visitId)}` }, 'Correct this visit')), otherUnitForm(visitId, unit), withdrawForm(visitId)] : '');
  } catch (refusal) {
    sayFailure(target, refusal);
  }
}

// What files leave open, as questions with the choices and an example from the file; and which of their columns is what.

import { element } from '../shared/dom.js';
import { MEANINGS } from './meanings.js';

const KINDS = { units: 'units', visits: 'visits', depots: 'depots', prices: 'a price list', work: 'planned work' };

const exampleWords = question => (question.example
  ? element('p', {}, `Row ${question.row}, ${question.column}: `, element('code', {}, question.example)) : '');

function zoneBox(name, question) {
  const zones = [...new Set([...question.choices.map(choice => choice.value), ...(Intl.supportedValuesOf?.('timeZone') ?? [])])];
  return element('select', { name, 'aria-label': 'Time zone' }, element('option', { value: '' }, 'Choose'),
    zones.map(zone => element('option', { value: zone }, zone)));
}

function choices(name, question, given) {
  return element('div', { class: 'choices' }, question.choices.map(choice => element('label', {},
    element('input', { type: 'radio', name, value: choice.value, checked: given === choice.value }),
    element('span', {}, choice.words, choice.reading ? element('span', { class: 'hint' }, choice.reading) : ''))));
}

function ask(file, place, question) {
  const name = `${place}/${question.key}`;
  return element('fieldset', { class: 'question' }, element('legend', {}, question.words), exampleWords(question),
    question.key === 'zone' ? zoneBox(name, question) : choices(name, question, file.answers[question.key]));
}

function columnRow(file, place, column, index) {
  const id = `column-${place}-${index}`;
  return element('div', { class: 'field column' }, element('label', { for: id }, column.name,
    element('span', { class: 'hint' }, column.example ? `for example ${column.example}` : 'empty')),
  element('select', { id, name: `${place}:${index}` }, element('option', { value: '' }, 'left out'),
    file.meanings.map(meaning => element('option', { value: meaning, selected: meaning === column.meaning }, MEANINGS[meaning] ?? meaning))));
}

function mapping(file, place, open) {
  if (!file.kind) return '';
  return element('details', { open }, element('summary', {}, open ? 'Which column is what' : `Columns of ${file.name}`),
    element('p', {}, 'What a column is, with its unit of measure. It is remembered for files with the same header.'),
    element('div', { class: 'pairs' }, file.columns.map((column, index) => columnRow(file, place, column, index))));
}

function fileWords(file) {
  const kind = file.kind ? `${KINDS[file.kind]}, ${file.rows.toLocaleString()} rows` : 'not known yet what it holds';
  return `${file.name}: ${kind}${file.is_remembered ? '; read as files with this header were read before' : ''}`;
}

const SAID = { decimal: { point: 'decimal point', comma: 'decimal comma' }, dates: { day_first: 'day before month', month_first: 'month before day' } };

/** How the file is read, for whoever wants to see that it is right. */
function manner(file) {
  const words = [...Object.entries(SAID).map(([key, said]) => said[file.answers[key]]),
    file.answers.zone ? `clock times of ${file.answers.zone}` : '', file.answers.text ? `letters of ${file.answers.text}` : ''].filter(Boolean);
  return words.length ? element('p', { class: 'quiet' }, `Read with ${words.join(', ')}.`) : '';
}

function showFile(file, place) {
  const asked = file.questions.filter(question => question.key !== 'columns');
  const columns = file.questions.find(question => question.key === 'columns');
  return element('section', { class: 'card' }, element('h3', {}, fileWords(file)), manner(file), asked.map(question => ask(file, place, question)),
    columns?.words.includes('missing') ? element('p', { class: 'question' }, columns.words) : '', mapping(file, place, Boolean(columns)));
}

/** Answers of a form, file by file; what was left open stays open. */
function answersOf(form, files) {
  const data = new FormData(form);
  return files.map((file, place) => {
    const answers = {};
    for (const [name, value] of data) {
      if (name.startsWith(`${place}/`) && value) answers[name.slice(`${place}/`.length)] = value;
    }
    const told = file.kind && file.columns.some((column, index) => data.has(`${place}:${index}`));
    const touched = form.dataset[`columns${place}`] || file.questions.some(question => question.key === 'columns');
    return { answers, columns: told && touched ? file.columns.map((column, index) => data.get(`${place}:${index}`) ?? '') : null };
  });
}

/** @param say is given the answers */
export function showFiles(view, say) {
  const open = view.files.some(file => file.questions.length);
  const form = element('form', { id: 'questions', novalidate: true }, open ? element('h2', { tabindex: '-1' }, 'Before these files can be read') : element('h2', {}, 'How they were read'),
    view.files.map(showFile), element('div', { class: 'buttons' }, element('button', { class: open ? 'main' : undefined }, open ? 'Go on' : 'Read them so')));
  form.addEventListener('change', event => {
    const [place] = event.target.name.split(':');
    if (event.target.name.includes(':')) form.dataset[`columns${place}`] = 'yes';
  });
  form.addEventListener('submit', event => {
    event.preventDefault();
    say(answersOf(form, view.files));
  });
  return form;
}

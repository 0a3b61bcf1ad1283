// Units that are chosen in the yard: ticked on this and on other pages of the list, or all that fit the filter; and what can be done with them.

import { byId, element, fill } from '../shared/dom.js';
import { get, newId, post, postForFile } from '../shared/api.js';
import { fillWho, onSubmit } from '../shared/form.js';
import { sayFailure } from '../shared/frame.js';
import { count } from '../shared/words.js';
import { WORKS } from '../visit/fields.js';

const KEPT = 'longsummer.chosen';
const ticked = new Set(JSON.parse(sessionStorage.getItem(KEPT) ?? '[]'));
let all = false;
let yard;
let filter;

function keep() {
  sessionStorage.setItem(KEPT, JSON.stringify([...ticked]));
}

/** The box that ticks one row. */
export function tickOf(row) {
  const box = element('input', { type: 'checkbox', 'data-unit': row.unit_id, checked: ticked.has(row.unit_id), onchange: event => {
    all = false;
    if (event.target.checked) ticked.add(row.unit_id);
    else ticked.delete(row.unit_id);
    changed();
  } });
  return element('label', { class: 'tick take no-print' }, box, element('span', { class: 'off-screen' }, `Choose ${row.label}`));
}

const rowBoxes = () => [...document.querySelectorAll('.tick input')];

function changed() {
  keep();
  for (const box of rowBoxes()) box.checked = all || ticked.has(box.dataset.unit);
  fill(byId('acting'));
  show();
}

function tickPage() {
  all = false;
  yard.rows.forEach(row => ticked.add(row.unit_id));
  changed();
}

function none() {
  all = false;
  ticked.clear();
  changed();
}

const number = () => (all ? yard.found : ticked.size);
const choice = () => (all ? { filter, expected: yard.found } : { units: [...ticked] });

const press = (words, does, main = false) => element('button', { type: 'button', class: main ? 'main' : undefined, onclick: does }, words);

function show() {
  const pageTicked = yard.rows.every(row => ticked.has(row.unit_id));
  fill(byId('chosen'), element('div', { class: 'buttons' },
    number() ? element('p', { class: 'chosen-count', role: 'status' }, `${number()} chosen`) : '',
    !all && !pageTicked ? press(yard.found > yard.rows.length ? 'Choose these rows' : 'Choose all', tickPage) : '',
    !all && yard.found > yard.rows.length ? press(`Choose all ${yard.found}`, () => { all = true; changed(); }) : '',
    number() ? [press('Choose none', none), press('Make a round', () => offer(roundForm)), press('CSV', takeFile), press('Plan work', () => offer(planForm))] : ''));
}

async function takeFile() {
  try {
    await postForFile('yard.csv', choice(), 'yard.csv');
  } catch (refusal) {
    sayFailure(byId('acting'), refusal);
  }
}

const field = (label, box, hint = '') => element('div', { class: 'field' }, element('label', { for: box.id }, label, hint ? element('span', { class: 'hint' }, hint) : ''), box);
const cancel = () => press('Leave it', () => { fill(byId('acting')); show(); });

async function offer(form) {
  const who = await get('session').catch(() => ({}));
  const made = form(who.signed_in);
  fill(byId('acting'), made);
  fillWho(made);
  made.querySelector('input, select').focus();
}

const name = signedIn => (signedIn ? '' : field('Your name', element('input', { type: 'text', id: 'by', name: 'by', autocomplete: 'name' })));

function roundForm(signedIn) {
  const id = newId();
  const problems = element('div', {});
  const form = element('form', { class: 'card', novalidate: true }, problems, element('h2', {}, `A round of ${count(number(), 'unit', 'units')}`),
    field('For which day', element('input', { type: 'date', id: 'day', name: 'day', value: new Date().toISOString().slice(0, 10) })),
    field('What to call it', element('input', { type: 'text', id: 'title', name: 'title', dir: 'auto' }), 'may stay empty'), name(signedIn),
    element('div', { class: 'buttons' }, element('button', { class: 'main' }, 'Make it'), cancel()));
  onSubmit(form, problems, async boxes => {
    const made = await post('rounds', { id, choice: choice(), boxes });
    ticked.clear();
    keep();
    location.assign(`../round/?round=${encodeURIComponent(made.round_id)}`);
  });
  return form;
}

function planForm(signedIn) {
  const id = newId();
  const problems = element('div', {});
  const form = element('form', { class: 'card', novalidate: true }, problems, element('h2', {}, `Plan work on ${count(number(), 'unit', 'units')}`),
    element('fieldset', {}, element('legend', {}, 'What is to be done'), element('div', { class: 'choices' },
      WORKS.map(([value, text]) => element('label', {}, element('input', { type: 'checkbox', name: 'works', value }), text)))),
    element('div', { class: 'pairs' }, field('By when', element('input', { type: 'date', id: 'planned_for', name: 'planned_for' })),
      field('Price of each, all-in', element('input', { type: 'text', inputmode: 'decimal', id: 'price', name: 'price' }), 'empty: by the price list of its depot'),
      field('Note', element('input', { type: 'text', id: 'note', name: 'note', dir: 'auto' })), name(signedIn)),
    element('div', { class: 'buttons' }, element('button', { class: 'main' }, 'Plan it'), cancel()));
  onSubmit(form, problems, async boxes => {
    const { planned } = await post('yard/planned-work', { id, choice: choice(), boxes });
    ticked.clear();
    keep();
    fill(byId('acting'), element('p', { class: 'done-note' }, `Work is planned on ${count(planned, 'unit', 'units')}. `, element('a', { href: '?planned=yes' }, 'See them')));
    all = false;
    rowBoxes().forEach(box => { box.checked = false; });
    show();
  });
  return form;
}

/** Lays what can be chosen and done. */
export function layChoice(shown, asked) {
  yard = shown;
  filter = asked;
  if (yard.found) show();
}

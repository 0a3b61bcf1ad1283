// Fleets as files, in; the demo fleet, in and out.

import { byId, element, fill } from '../shared/dom.js';
import { get, post, remove, send } from '../shared/api.js';
import { layFrame } from '../shared/frame.js';
import { count } from '../shared/words.js';

const sayProblem = ({ field, given, limit, remedy }) =>
  [element('strong', {}, field), field ? ': ' : '', given ? `“${given}” is given. ` : '', limit, ' ', remedy];

function sayProblems(refusal) {
  const problems = refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }];
  const shown = element('div', { class: 'problems', role: 'alert', tabindex: '-1' },
    element('h2', {}, `Nothing was taken: ${count(problems.length, 'thing', 'things')} to put right`),
    element('ol', {}, problems.map(problem => element('li', {}, sayProblem(problem)))));
  fill(byId('problems'), shown);
  shown.focus();
}

function sayDone(taken) {
  fill(byId('done'), element('p', { class: 'sentence' }, `${count(taken.units_added, 'unit', 'units')} added, ${taken.units_changed} changed; `
    + `${count(taken.visits_stored, 'visit', 'visits')} stored, ${taken.visits_already_stored} were there already.`),
  taken.remarks.length ? element('ul', {}, taken.remarks.map(remark => element('li', {}, remark))) : '',
  element('div', { class: 'buttons' }, element('a', { class: 'button main', href: '../yard/' }, 'To the yard')));
}

async function take(event, path, press) {
  event.preventDefault();
  const form = event.target;
  fill(byId('problems'));
  fill(byId('done'), element('p', {}, 'Reading and judging; a large fleet takes a while.'));
  press.disabled = true;
  try {
    sayDone(await send(path, new FormData(form)));
    form.reset();
    byId('main').focus();
    window.scrollTo(0, 0);
  } catch (refusal) {
    fill(byId('done'));
    sayProblems(refusal);
  } finally {
    press.disabled = false;
  }
}

async function act(step) {
  try {
    await step();
    location.assign('../yard/');
  } catch (refusal) {
    sayProblems(refusal);
  }
}

async function offerDemo() {
  const house = await get('house').catch(() => undefined);
  if (!house) return;
  if (house.demo) {
    fill(byId('demo-buttons'), element('button', { type: 'button', onclick: () => act(() => remove('demo')) }, 'Remove the demo fleet and whatever was added to it'));
  } else if (house.units === 0) {
    fill(byId('demo-buttons'), element('button', { type: 'button', onclick: () => act(() => post('demo', {})) }, 'Bring the demo fleet'));
  } else {
    fill(byId('demo-buttons'), element('p', { class: 'quiet' }, 'This record holds a fleet of its own; start Longsummer on another directory to see the demo.'));
  }
}

layFrame('import', { withUnits: false });
byId('form').addEventListener('submit', event => take(event, 'import', byId('send')));
byId('record-form').addEventListener('submit', event => take(event, 'record', byId('send-record')));
offerDemo();

// Files of a fleet, in whatever form: looked through, asked about, tried out, taken in. The whole record; the demo fleet.

import { byId, element, fill } from '../shared/dom.js';
import { get, part, post, remove, send } from '../shared/api.js';
import { layFrame } from '../shared/frame.js';
import { showFiles } from './questions.js';
import { showTrial } from './trial.js';
import { count } from '../shared/words.js';

const LOOK_AGAIN = 400;
const work = byId('work');
let handover;

const sayProblem = ({ field, given, limit, remedy }) =>
  element('li', {}, element('strong', {}, field), field ? ': ' : '', given ? `“${given}” is given. ` : '', limit, ' ', remedy);

function sayProblems(refusal) {
  const problems = refusal.problems ?? [{ field: '', given: '', limit: refusal.message, remedy: 'Try again.' }];
  const shown = element('div', { class: 'problems', role: 'alert', tabindex: '-1' },
    element('h2', {}, `Nothing was taken: ${count(problems.length, 'thing', 'things')} to put right`),
    element('ol', {}, problems.map(sayProblem)));
  fill(byId('problems'), shown);
  shown.focus();
}

function sayDone(taken) {
  fill(work, element('div', { class: 'done-note', tabindex: '-1', id: 'taken' }, element('p', { class: 'sentence' },
    `${count(taken.units_added, 'unit', 'units')} added, ${taken.units_changed} changed; `
    + `${count(taken.visits_stored, 'visit', 'visits')} stored, ${taken.visits_already_stored} were there already.`),
  taken.remarks.length ? element('ul', {}, taken.remarks.map(remark => element('li', {}, remark))) : '',
  element('div', { class: 'buttons' }, element('a', { class: 'button main', href: '../yard/' }, 'To the yard'))));
  byId('taken').focus();
}

const address = (...more) => ['handovers', part(handover), ...more].join('/');
const pause = () => new Promise(resolve => { setTimeout(resolve, LOOK_AGAIN); });

function sayProgress(view) {
  const doing = view.state === 'taking' ? 'Taking in and judging' : view.state === 'stopping' ? 'Stopping; nothing will be changed' : 'Looking through';
  const words = `${doing}${view.progress.done ? `: ${view.progress.done.toLocaleString()} ${view.progress.what}` : ''}`;
  if (!byId('progress')) {
    fill(work, element('p', { id: 'progress', class: 'sentence', role: 'status' }), element('div', { class: 'buttons' },
      element('button', { type: 'button', id: 'stop', onclick: stop }, 'Stop')));
  }
  byId('progress').textContent = words;
}

async function stop() {
  byId('stop')?.setAttribute('disabled', '');
  await watch(remove(address()));
}

function startAgain(words) {
  byId('form').hidden = false;
  fill(work, words ? element('p', { class: 'sentence', role: 'status' }, words) : '');
}

/** The way back, and on where there is one. */
const buttons = (...more) => element('div', { class: 'buttons' }, more, element('button', { type: 'button', onclick: async () => {
  await remove(address()).catch(() => undefined);
  startAgain('');
} }, 'Choose other files'));

const ENDS = {
  asking: view => fill(work, showFiles(view, answer), buttons()),
  tried: view => fill(work, showTrial(view, () => watch(post(address('taking'), {}))), showFiles(view, answer), buttons()),
  taken: view => sayDone(view.taken),
  stopped: () => startAgain('Stopped; nothing was changed.'),
  refused: view => { startAgain(''); sayProblems(view); },
  failed: view => { startAgain(''); sayProblems(view); },
};

const answer = files => watch(post(address('answers'), { files }));

const setPresses = disabled => work.querySelectorAll('button').forEach(press => { press.disabled = disabled; });

/** A look that did not come through is followed by another; the work goes on meanwhile. */
const lookAgain = view => get(address()).catch(refusal => {
  if (refusal.status) throw refusal;
  return view;
});

/** Shows how far the files have come until somebody has to say something. What was answered stays when it could not be sent. */
async function watch(asked) {
  fill(byId('problems'));
  setPresses(true);
  try {
    let view = await asked;
    handover = view.handover;
    byId('form').hidden = true;
    while (!ENDS[view.state]) {
      sayProgress(view);
      await pause();
      view = await lookAgain(view);
    }
    ENDS[view.state](view);
    work.querySelector('h2')?.focus();
  } catch (refusal) {
    setPresses(false);
    if (!handover || refusal.status === 404) startAgain('');
    sayProblems(refusal);
  }
}

async function takeRecord(event) {
  event.preventDefault();
  const press = byId('send-record');
  press.disabled = true;
  fill(byId('problems'));
  fill(work, element('p', { role: 'status' }, 'Reading and judging; a large fleet takes a while.'));
  try {
    sayDone(await send('record', new FormData(event.target)));
    event.target.reset();
  } catch (refusal) {
    fill(work);
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
byId('form').addEventListener('submit', event => {
  event.preventDefault();
  watch(send('handovers', new FormData(event.target)));
});
byId('record-form').addEventListener('submit', takeRecord);
offerDemo();

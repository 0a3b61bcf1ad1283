// What the unit should show and what the readings say, while they are typed.

import { byId, element, fill } from '../shared/dom.js';
import { part, post } from '../shared/api.js';
import { strip } from '../shared/strip.js';
import { sayAt } from '../shared/problems.js';
import { dayText, stateClass, stateText } from '../shared/words.js';

const PAUSE = 300;
let timer;
let running;

function expectation(name, judged) {
  if (!judged.expected) return '';
  return element('div', {}, element('p', {}, element('b', {}, `${name}: `), judged.measured ? judged.text
    : `should be ${judged.expected.text.split(' ')[0]} ± ${judged.expanded.text}`), judged.measured ? strip(judged, name) : '');
}

const pair = verdict => element('div', { class: 'pair' }, expectation('Split', verdict.split), expectation('Amps', verdict.amps));

function why(verdict) {
  const lines = [...verdict.conditions.map(({ phrase, text }) => `${phrase}: ${text}`), ...verdict.cannot_tell,
    ...verdict.reasons.map(({ visit_id: id, day, text }) => (id === verdict.visit_id ? text : `${dayText(day)}: ${text}`))];
  const next = verdict.next_best_reading;
  if (!lines.length && !next) return '';
  return element('details', {}, element('summary', {}, 'Why, and what next'), element('ul', {}, lines.map(line => element('li', {}, line))),
    next ? element('p', {}, `Next: ${next.text} (${next.minutes} min): ${next.settles}`) : '');
}

/** @returns nodes that say a verdict in few lines */
export function say(verdict) {
  if (verdict.waiting) return verdict.split.expected || verdict.amps.expected ? [pair(verdict)] : [];
  return [element('p', {}, element('span', { class: stateClass(verdict.state) }, stateText(verdict.state))),
    element('p', { class: 'sentence' }, verdict.sentence),
    verdict.before_and_after ? element('p', {}, verdict.before_and_after) : '',
    pair(verdict), why(verdict)];
}

function question(verdict, problems, names) {
  for (const name of [...names, 'filter_condition', 'coil_condition', 'iced_coil', 'fan_speed', 'power_source']) {
    const box = byId(name);
    const given = box?.name ?? name;
    const said = [...problems.filter(problem => problem.field === given).map(problem => `${problem.limit} ${problem.remedy}`),
      ...(verdict?.findings ?? []).filter(finding => finding.box === name).map(finding => finding.text)];
    sayAt(name, said.map(text => element('span', {}, text, ' ')));
  }
}

function proposeNext(next) {
  document.querySelectorAll('.reading.proposed').forEach(place => place.classList.remove('proposed'));
  const place = next?.box && byId(`${next.box}-reading`);
  if (!place) return;
  place.classList.add('proposed');
  if (place.closest('#optional')) byId('optional').open = true;
}

async function judge(unitId, form, names) {
  running?.abort();
  running = new AbortController();
  try {
    const { verdict, problems } = await post(`units/${part(unitId)}/judge`, form(), { signal: running.signal });
    question(verdict, problems, names);
    if (!verdict) return;
    fill(byId('live-said'), say(verdict));
    proposeNext(verdict.next_best_reading);
  } catch (refusal) {
    if (refusal.name === 'AbortError') return;
    fill(byId('live-said'), element('p', {}, `No answer just now: ${refusal.message} You can go on typing.`));
  }
}

/** Asks for a verdict a moment after the last key; `form` gives what is typed now. */
export function judgeSoon(unitId, form, names) {
  clearTimeout(timer);
  timer = setTimeout(() => judge(unitId, form, names), PAUSE);
}

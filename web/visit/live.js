// What the unit should show and what the readings say, while they are typed.

import { byId, element, fill } from '../shared/dom.js';
import { strip } from '../shared/strip.js';
import { sayAt } from '../shared/problems.js';
import { dayText, stateClass, stateText } from '../shared/words.js';
import { unfold } from './folds.js';

const PAUSE = 10;
let timer;

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

/** What was asked of a reading and answered with “it is so”, by box: asked again only when the reading changes. */
const answered = new Map();

/** Goes with the first key that makes it another reading, so that whoever goes on by keyboard does not land on an offer that has lapsed. */
function asItIs(name, asked) {
  const offer = element('button', { type: 'button', class: 'quiet', onclick: () => {
    answered.set(name, asked);
    sayAt(name, 'Kept as it was read.');
    offer.remove();
    byId(name).focus();
  } }, 'It is so: keep it');
  byId(name).addEventListener('input', () => offer.remove(), { once: true });
  return offer;
}

function question(verdict, problems, names) {
  for (const name of [...names, 'filter_condition', 'coil_condition', 'iced_coil', 'fan_speed', 'power_source']) {
    const box = byId(name);
    const given = box?.name ?? name;
    const wrong = problems.filter(problem => problem.field === given).map(problem => `${problem.limit} ${problem.remedy}`);
    const doubts = (verdict?.findings ?? []).filter(finding => finding.box === name).map(finding => finding.text);
    const asked = `${box?.value}: ${doubts.join(' ')}`;
    if (!wrong.length && doubts.length && answered.get(name) === asked) continue;
    answered.delete(name);
    sayAt(name, [...wrong, ...doubts].map(text => element('span', {}, text, ' ')), doubts.length && !wrong.length && box?.value ? asItIs(name, asked) : '');
    if (wrong.length || doubts.length) unfold(byId(`${name}-question`));
  }
}

/** The proposed optional reading stands outside of the fold, with what it would settle; the one before goes back to its place. */
function proposeNext(next) {
  const place = next?.box ? byId(`${next.box}-reading`) : undefined;
  document.querySelectorAll('.reading.proposed, .look.proposed').forEach(other => { if (other !== place) takeBack(other); });
  if (!place || place.classList.contains('proposed')) return;
  place.classList.add('proposed');
  place.prepend(element('p', { class: 'quiet why-proposed' }, `Worth taking now (${next.minutes} min): ${next.settles}`));
  if (place.closest('#optional')) {
    homes.set(place, element('span', { hidden: true }));
    place.replaceWith(homes.get(place));
    byId('proposed').append(place);
  } else {
    unfold(place);
  }
}

const homes = new Map();

/** What was typed into it keeps it where it is. */
function takeBack(place) {
  if (place.contains(document.activeElement) || place.querySelector('input[type=text]')?.value) return;
  place.classList.remove('proposed');
  place.querySelector('.why-proposed')?.remove();
  if (!homes.has(place)) return;
  homes.get(place).replaceWith(place);
  homes.delete(place);
}

/** Judges once, now. @returns {verdict, problems} */
export function judgeNow(opened, form, names) {
  const answer = opened.judge(form());
  question(answer.verdict, answer.problems, names);
  if (answer.verdict) {
    fill(byId('live-said'), say(answer.verdict));
    proposeNext(answer.verdict.next_best_reading);
  }
  return answer;
}

/** Judges a moment after the last key; `form` gives what is typed now. */
export function judgeSoon(opened, form, names) {
  clearTimeout(timer);
  timer = setTimeout(() => judgeNow(opened, form, names), PAUSE);
}

// A round that was filled in by hand, typed in: the same units in the same order, one card each, with the questions that the visit page
// asks. Each is saved by itself under the id it has on the round, so that typing it in twice stores it once.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, part } from '../shared/api.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { offsetMinutes, openUnit } from '../shared/judging.js';
import { draftKept, dropDraft, dropItem, keepDraft, keepItem } from '../shared/pocket.js';
import { rememberTechnician, system, technician } from '../shared/reader.js';
import { sendItem } from '../shared/sending.js';
import { count, dayText } from '../shared/words.js';
import { say } from '../visit/live.js';
import { AMBIENT_AT, MOISTURE, OPTIONAL, READINGS, SUPPLY_AT, WORKS } from '../visit/fields.js';
import { byDepot, nameOf, unitText, whereNodes } from '../round/stops.js';

const roundId = new URLSearchParams(location.search).get('round');
const PAUSE = 250;
let round;

const RUN = { name: 'run_minutes', label: 'Minutes it had run', unit: 'min' };
const OFF = { name: 'volts_off', label: 'Volts with the unit off', unit: 'V' };
const boxName = ({ name, unit }) => (unit === 'temperature' ? name + (system() === 'us' ? '_f' : '_c') : name);

/** One card: its form, its unit opened for judging when somebody begins to type, its questions. */
class Card {
  constructor(stop, index) {
    this.stop = stop;
    this.key = `visit.${stop.unit_id}.${stop.visit_id}`;
    this.prefix = `s${index + 1}`;
    this.form = element('form', { novalidate: true, autocomplete: 'off' }, this.boxes(), this.said = element('div', { 'aria-live': 'polite' }),
      element('div', { class: 'buttons' }, this.button = element('button', { class: 'main' }, 'Save this one')));
    this.root = element('section', { class: 'stop', 'aria-label': `${index + 1}. ${stop.label}` }, element('h2', {}, `${index + 1}. `, nameOf(stop)),
      element('p', { class: 'where' }, whereNodes(stop)), this.form);
    if (stop.visited) this.showDone('It is saved.');
    this.form.addEventListener('focusin', () => this.open());
    this.form.addEventListener('input', () => this.changed());
    this.form.addEventListener('submit', event => this.save(event));
  }

  question(name) {
    return element('p', { class: 'question', id: `${this.prefix}-${name}-question` });
  }

  number(box) {
    const id = `${this.prefix}-${box.name}`;
    return element('div', { class: 'field' }, element('label', { for: id }, box.label), element('div', { class: 'box' },
      element('input', { type: 'text', inputmode: 'decimal', id, name: boxName(box), enterkeyhint: 'next', 'aria-describedby': `${id}-question` }),
      element('span', { class: 'unit' }, unitText(box.unit))), this.question(box.name));
  }

  choice(name, label, choices) {
    const id = `${this.prefix}-${name}`;
    return element('div', { class: 'field' }, element('label', { for: id }, label), element('select', { id, name },
      choices.map(([value, text]) => element('option', { value }, text))), this.question(name));
  }

  ticks(name, label, choices) {
    return element('fieldset', {}, element('legend', {}, label), element('div', { class: 'choices' }, choices.map(([value, text]) => element('label', {},
      element('input', { type: 'checkbox', name, value }), text))), this.question(name));
  }

  boxes() {
    const none = ['', 'not noted'];
    const others = READINGS.filter(box => !box.moisture);
    const humidity = { name: 'return_rh_pct', label: 'Return humidity', unit: '%' };
    return [element('div', { class: 'typed' }, this.choice('filter_condition', 'Filter as found', [['', 'not looked'], ['clean', 'clean'], ['dirty', 'dirty'], ['missing', 'missing']]),
      this.number(RUN), this.number(others[0]), this.number(humidity), this.choice('moisture', 'Humidity as', MOISTURE.map(([name, text]) => [name, text])),
      others.slice(1).flatMap(box => [this.number(box), box.choice ? this.choice(box.choice[0], box.choice[2], [none, ...box.choice[1].filter(([value]) => value)]) : ''])),
    element('details', {}, element('summary', {}, 'Everything else'), element('div', { class: 'typed' }, this.number(OFF),
      this.choice('coil_condition', 'Condenser coil', [['', 'not looked'], ['clean', 'clean'], ['light', 'light'], ['heavy', 'heavy']]),
      this.choice('fan_speed', 'Fan', [['high', 'high'], ['low', 'low'], none]),
      this.choice('power_source', 'Power', [none, ['shore', 'shore'], ['generator', 'generator'], ['inverter', 'inverter']]), OPTIONAL.map(box => this.number(box))),
    this.ticks('iced_coil', 'Indoor coil', [['yes', 'frost or ice on it']]), this.ticks('one_probe', 'Thermometers', [['yes', 'one thermometer read return and supply']]),
    this.ticks('work', 'Work done after the readings', WORKS)),
    element('div', { class: 'typed' }, this.textBox('visited_at', 'When', 'datetime-local'), this.textBox('notes', 'Note', 'text'))];
  }

  textBox(name, label, type) {
    const id = `${this.prefix}-${name}`;
    const value = name === 'visited_at' ? `${round.for_day}T12:00` : undefined;
    return element('div', { class: 'field' }, element('label', { for: id }, label), element('input', { type, id, name, value, dir: 'auto' }), this.question(name));
  }

  async open() {
    this.opening ??= openUnit(this.stop.unit_id).then(opened => { this.opened = opened; }).catch(refusal => this.sayProblems(refusal.problems ?? []));
    await this.opening;
  }

  texts() {
    const data = new FormData(this.form);
    const { work, moisture, ...texts } = Object.fromEntries(data);
    const [name, , unit] = MOISTURE.find(([value]) => value === moisture);
    if (name !== 'return_rh_pct') {
      texts[boxName({ name, unit })] = texts.return_rh_pct;
      delete texts.return_rh_pct;
    }
    const offset = offsetMinutes(this.stop.time_zone, texts.visited_at) ?? -new Date(texts.visited_at || Date.now()).getTimezoneOffset();
    return { ...texts, technician: byId('technician').value, work_done: data.getAll('work').join(','), system: system(), utc_offset_minutes: String(offset) };
  }

  changed() {
    const humidity = MOISTURE.find(([value]) => value === this.form.elements.moisture.value);
    this.form.elements.return_rh_pct.nextElementSibling.textContent = unitText(humidity[2]);
    keepDraft(this.key, { id: this.stop.visit_id, system: system(), typed: this.typed() }).catch(() => undefined);
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.judge(false), PAUSE);
  }

  typed() {
    return [...this.form.elements].filter(box => box.name).map(box => (box.type === 'checkbox' ? box.checked : box.value));
  }

  /** What was typed before and not saved stands in the boxes again. */
  async takeUp() {
    const draft = await draftKept(this.key);
    if (!draft?.typed || this.stop.visited || draft.system !== system()) return;
    [...this.form.elements].filter(box => box.name).forEach((box, index) => {
      if (box.type === 'checkbox') box.checked = draft.typed[index];
      else if (draft.typed[index] !== undefined) box.value = draft.typed[index];
    });
  }

  async judge(saving) {
    await this.open();
    if (!this.opened) return undefined;
    const answer = this.opened.judge({ id: this.stop.visit_id, boxes: this.texts(), saving });
    this.ask(answer);
    if (answer.verdict) fill(this.said, say(answer.verdict));
    return answer;
  }

  /** Writes what is asked under the boxes it is asked of. */
  ask({ verdict, problems }) {
    const said = {};
    const note = (name, text) => { (said[name] ??= []).push(text); };
    problems.forEach(({ field, limit, remedy }) => note(this.nameOf(field), `${limit} ${remedy}`));
    (verdict?.findings ?? []).forEach(({ box, text }) => note(['return_wb', 'return_dp'].includes(box) ? 'return_rh_pct' : box, text));
    for (const place of this.form.querySelectorAll('.question')) {
      const texts = said[place.id.slice(this.prefix.length + 1, -'-question'.length)] ?? [];
      fill(place, texts.map(text => element('span', {}, text, ' ')));
      const fold = place.closest('details');
      if (texts.length && fold) fold.open = true;
    }
  }

  nameOf(field) {
    const name = field.replace(/_[fc]$/, '');
    return { return_wb: 'return_rh_pct', return_dp: 'return_rh_pct', work_done: 'work' }[name] ?? name;
  }

  sayProblems(problems) {
    this.ask({ problems });
    fill(this.said, element('div', { class: 'problems', role: 'alert', tabindex: '-1' }, problems.map(({ limit, remedy }) => element('p', {}, `${limit} ${remedy}`))));
    this.said.firstChild.focus();
  }

  showDone(text, nodes = []) {
    this.root.classList.add('done');
    this.stop.visited = true;
    fill(this.form, element('p', { class: 'done-note', tabindex: '-1' }, text, ' ', element('a', { href: `../unit/?unit=${part(this.stop.unit_id)}&visit=${part(this.stop.visit_id)}` }, 'See it on the chart')), nodes);
    showLeft();
  }

  async save(event) {
    event.preventDefault();
    this.button.disabled = true;
    try {
      const answer = await this.judge(true);
      if (answer?.problems.length) this.sayProblems(answer.problems);
      else if (answer) await this.send(answer.verdict);
    } finally {
      this.button.disabled = false;
    }
  }

  async send({ state, sentence }) {
    const item = { id: this.stop.visit_id, kind: 'visit', unit_id: this.stop.unit_id, label: this.stop.label, boxes: this.texts(), said: { state, sentence },
      saved_at: Date.now(), state: 'waiting' };
    const kept = await keepItem(item).then(() => true, () => false);
    const { answer, refusal } = await sendItem(item);
    if (refusal && (refusal.status === 422 || !kept)) {
      await dropItem(item.id).catch(() => undefined);
      this.sayProblems(refusal.problems);
      return;
    }
    rememberTechnician(byId('technician').value);
    await dropDraft(this.key);
    const said = answer?.verdict ? say(answer.verdict) : [element('p', { class: 'sentence' }, sentence)];
    this.showDone(refusal ? 'Kept on this device; it is sent as soon as the server takes it.' : answer.stored_before ? 'It was saved before.' : 'Saved.', refusal ? [] : said);
    nextCard(this)?.form.querySelector('select, input').focus();
  }
}

let cards = [];
const nextCard = card => cards.slice(cards.indexOf(card) + 1).find(other => !other.stop.visited);

function showLeft() {
  const left = round.stops.filter(stop => !stop.visited).length;
  fill(byId('about'), `${dayText(round.for_day)} · ${count(round.stops.length, 'unit', 'units')}, ${left ? `${left} still to type in` : 'all typed in'}`);
}

async function lay(given) {
  round = given;
  const name = round.title || `Round of ${dayText(round.for_day)}`;
  document.title = `Typed in: ${name} – Longsummer`;
  fill(byId('title'), named(name), ': typed in');
  fill(byId('does'), element('div', { class: 'field' }, element('label', { for: 'technician' }, 'Read by'), element('input', { type: 'text', id: 'technician', dir: 'auto', autocomplete: 'name', value: technician() })),
    element('p', { class: 'quiet' }, 'Enter saves a unit and goes on to the next. What you type is kept on this device until it is saved.'));
  fill(byId('stops'), byDepot(round.stops, (stop, index) => {
    const card = new Card(stop, index);
    cards.push(card);
    return card.root;
  }));
  showLeft();
  for (const card of cards) await card.takeUp();
}

layFrame('typed-in');
document.addEventListener('units-chosen', () => location.reload());
if (roundId) get(`rounds/${part(roundId)}`).then(lay).catch(refusal => sayFailure(byId('failure'), refusal));
else location.replace('../round/');

// Keep, clean, repair and replace side by side.

import { byId, element, fill, named, terms } from '../shared/dom.js';
import { get, part, post, remove } from '../shared/api.js';
import { cautionBox } from '../shared/cautions.js';
import { onSubmit } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { figureText, sourceText } from '../shared/prices.js';
import { dayText, withDays } from '../shared/words.js';
import { WORKS } from '../shared/works.js';

const unitId = new URLSearchParams(location.search).get('unit') ?? '';
const path = `units/${part(unitId)}/weighing`;

const amount = money => (money.minor === 0 ? '0' : money.text.replace(/ [A-Z]{3}$/, ''));

function against(option) {
  if (option.option === 'keep') return '';
  const { minor, text } = option.cheaper_than_keeping;
  return minor < 0 ? `${amount({ minor, text: text.replace('-', '') })} dearer` : `${amount({ minor, text })} cheaper`;
}

/** The lines of every option: what it is called, what stands in it, and how it looks. */
const lines = parts => [
  { title: 'That is', cell: option => option.works || 'leave it as it is', style: 'words' },
  ...parts.map(({ name }, index) => ({ title: name, cell: option => amount(option.parts[index].amount) })),
  { title: 'expected cost', cell: option => `${amount(option.expected)} ± ${amount(option.spread)}`, style: 'total' },
  { title: 'against keeping', cell: against },
  { title: 'chance that it cures', cell: option => option.cures || '–' },
  { title: 'chance that it quits before the season ends, looked after as usual', cell: option => option.quits },
];

const called = ({ option, advised }) => `${option}${advised ? ' (advised)' : ''}`;
const looks = (...names) => names.filter(Boolean).join(' ') || undefined;

/** A table where there is room, one option below the other on a phone: a style sheet shows the one or the other. */
function showOptions({ options, currency }) {
  const all = lines(options[0].parts);
  fill(byId('options'), element('thead', {}, element('tr', {}, element('th', { scope: 'col' }, currency),
    options.map(option => element('th', { scope: 'col', class: looks(option.advised && 'advised') }, called(option))))),
  element('tbody', {}, all.map(({ title, cell, style }) => element('tr', { class: looks(style) }, element('th', { scope: 'row' }, title),
    options.map(option => element('td', { class: looks(option.advised && 'advised') }, cell(option)))))));
  fill(byId('one-by-one'), element('p', { class: 'quiet small' }, `Amounts in ${currency}.`), options.map(option => element('section', { class: looks('option', option.advised && 'advised') },
    element('h3', {}, called(option)), element('dl', {}, all.map(({ title, cell, style }) => element('div', { class: looks(style) },
      element('dt', {}, title), element('dd', {}, cell(option) || '–')))))));
}

function showQuote({ quote, currency }) {
  byId('currency').textContent = currency;
  const note = quote && quote.price.currency !== currency ? ` It is in ${quote.price.currency} and does not count here.` : '';
  fill(byId('quote'), quote ? element('p', {}, `${quote.price.text} to ${quote.work_text}`, quote.offered_by ? [', from ', named(quote.offered_by)] : '',
    quote.offered_on ? `, offered ${dayText(quote.offered_on)}` : '', `.${note} `,
    element('button', { type: 'button', onclick: () => act(() => remove(`units/${part(unitId)}/quote`)) }, 'Forget it')) : element('p', { class: 'quiet' }, 'None: the list’s prices count.'));
}

async function showFigures() {
  const { figures } = await get('prices', { unit: unitId });
  fill(byId('figure-list'), element('p', {}, 'Defaults of ours are a start, not facts. Changed ones are underlined and say where.'),
    terms(figures.map(figure => [figure.meaning, element('span', { class: figure.own || figure.wider_from !== 'default' ? 'marked' : undefined },
      `${figureText(figure)} (${sourceText(figure)})`)])));
}

function show(weighing) {
  document.title = `The weighing of ${weighing.label} – Longsummer`;
  fill(byId('title'), 'Keep, clean, repair or replace: ', named(weighing.label));
  byId('sentence').textContent = withDays(weighing.sentence);
  byId('undecided').textContent = weighing.undecided;
  byId('undecided').hidden = !weighing.undecided;
  byId('settling').textContent = weighing.settling;
  byId('matters').textContent = weighing.matters ? '' : 'The difference between the two cheapest does not matter: either will do.';
  byId('on-site').checked = weighing.on_site;
  showOptions(weighing);
  fill(byId('flips'), weighing.flips.map(text => element('li', {}, text)));
  fill(byId('assumed'), [...weighing.assumed, weighing.quitting].map(text => element('li', {}, withDays(text))));
  showQuote(weighing);
  fill(byId('cautions'), weighing.sealed ? element('p', { class: 'quiet' }, 'Opening the sealed circuit of a roof unit is seldom worth it, and it needs certified hands.') : '',
    cautionBox(weighing.cautions));
  byId('weighing').hidden = false;
}

async function act(step) {
  try {
    show(await step());
    byId('again').textContent = 'Weighed again.';
  } catch (refusal) {
    sayFailure(byId('failure'), refusal);
  }
}

layFrame('weighing', { withUnits: false });
byId('work').append(...Object.entries(WORKS).map(([value, text]) => element('option', { value }, text)));
for (const [id, folder] of [['prices', 'prices'], ['plan', 'planned'], ['sheet', 'sheet'], ['unit', 'unit']]) byId(id).href = `../${folder}/?unit=${part(unitId)}`;
byId('on-site').addEventListener('change', () => act(() => get(path, { on_site: byId('on-site').checked ? 'yes' : '' })));
onSubmit(byId('quote-form'), byId('problems'), async boxes => {
  show(await post(`units/${part(unitId)}/quote`, { boxes }));
  byId('again').textContent = 'Weighed again.';
});
act(() => get(path)).then(showFigures).catch(refusal => sayFailure(byId('failure'), refusal));

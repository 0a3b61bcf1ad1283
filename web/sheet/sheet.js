// The owner's sheet: for those who look after the unit, and for whoever holds its link.

import { byId, element, fill, named } from '../shared/dom.js';
import { get, part, post, remove } from '../shared/api.js';
import { layFrame, sayFailure, unitsChoice } from '../shared/frame.js';
import { system } from '../shared/reader.js';
import { inDecimals } from '../shared/numbers.js';
import { dayText, recordedText, withDays } from '../shared/words.js';
import { drawn } from './drawn.js';

const unitId = new URLSearchParams(location.search).get('unit') ?? '';
const key = location.hash.slice(1);
const withLink = !unitId && key !== '';
const said = text => inDecimals(withDays(text));
const withKey = { headers: { Authorization: `Sheet ${key}` }, atTheDoor: true };

function letterhead({ business, logo }) {
  if (!logo && !business.name && !business.address && !business.telephone && !business.licence_number) return '';
  return element('div', { class: 'letterhead' }, logo ? element('img', { src: logo, alt: 'Logo' }) : '', element('div', {},
    element('p', { dir: 'auto' }, element('strong', {}, business.name)), business.address.split('\n').map(line => element('p', { dir: 'auto' }, line)),
    business.telephone ? element('p', {}, `Telephone ${business.telephone}`) : '', business.licence_number ? element('p', {}, `Licence ${business.licence_number}`) : ''));
}

function show(view) {
  const { sheet } = view;
  document.title = `Owner’s sheet: ${view.label} – Longsummer`;
  fill(byId('sheet'), letterhead(view), view.demo ? element('p', {}, element('strong', {}, 'An invented example.')) : '', element('h1', {}, named(view.label)),
    element('p', {}, named(sheet.machine)), element('p', {}, withDays(sheet.checked)), element('p', { class: 'sentence' }, said(sheet.sentence)),
    element('div', { class: 'pictures' }, [sheet.readings, sheet.seasons].filter(Boolean).map(drawn)),
    sheet.sections.map(({ title, paragraphs }) => [element('h2', {}, title), paragraphs.map(text => element('p', {}, withDays(text)))]),
    sheet.cautions.length ? element('aside', { class: 'cautions', 'aria-label': 'Cautions' }, element('h2', {}, 'Before anybody touches it'), element('ul', {}, sheet.cautions.map(text => element('li', {}, text)))) : '',
    element('p', { class: 'advice-only' }, view.advice_only), element('p', { class: 'small quiet' }, `${dayText(view.printed)}. ± is two standard uncertainties.`));
  byId('sheet').hidden = false;
}

/** With a link the file is fetched with its key, which must not stand in an address that is sent. */
async function savePdf() {
  const response = await fetch(`../api/sheet.pdf?system=${system()}`, { headers: withKey.headers });
  if (!response.ok) return;
  const address = URL.createObjectURL(await response.blob());
  element('a', { href: address, download: 'owners-sheet.pdf' }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

function showWays() {
  fill(byId('ways'), element('button', { type: 'button', class: 'main', onclick: () => window.print() }, 'Print'),
    withLink ? element('button', { type: 'button', onclick: savePdf }, 'Save as PDF')
      : element('a', { class: 'button', href: `../api/units/${part(unitId)}/sheet.pdf?system=${system()}` }, 'PDF'),
    withLink ? '' : element('a', { class: 'button', href: `../unit/?unit=${part(unitId)}` }, 'Back to the unit'));
}

function linkLine(link) {
  const state = link.alive ? `ends on ${dayText(link.ends)}` : link.withdrawn ? `withdrawn ${recordedText(link.withdrawn)}` : 'ended';
  return element('li', { class: 'linkline' }, 'Made ', recordedText(link.made), ' by ', named(link.made_by), `; ${state}. `,
    link.alive ? element('button', { type: 'button', onclick: () => withdraw(link.id) }, 'Withdraw') : '');
}

async function withdraw(id) {
  if (!confirm('Withdraw this link? Whoever has it will see nothing any more.')) return;
  showLinks(await remove(`units/${part(unitId)}/sheet-links/${part(id)}`));
}

async function make() {
  const { address } = await post(`units/${part(unitId)}/sheet-links`, {});
  showLinks(await get(`units/${part(unitId)}/sheet-links`), address);
}

function showLinks({ links }, made) {
  fill(byId('links'), element('h2', { id: 'links-title' }, 'Links for the owner'),
    element('p', {}, 'A link opens this one sheet, as it then is, without an account. It ends by itself after a year and can be withdrawn before.'),
    made ? element('p', { class: 'done-note', role: 'status' }, 'Hand this to the owner; it is shown once: ', element('code', {}, made)) : '',
    links.length ? element('ul', { class: 'plain-list' }, links.map(linkLine)) : '',
    element('div', { class: 'buttons' }, element('button', { type: 'button', onclick: make }, 'Make a link')));
  byId('links').hidden = false;
}

async function load() {
  try {
    show(await (withLink ? get('sheet', {}, withKey) : get(`units/${part(unitId)}/sheet`)));
    showWays();
  } catch (refusal) {
    if (withLink && [401, 404].includes(refusal.status)) {
      fill(byId('failure'), element('h1', {}, 'This link does not open anything any more'), element('p', {}, 'It was withdrawn or has ended. Ask whoever gave it to you for a new one.'));
    } else sayFailure(byId('failure'), refusal);
  }
}

if (withLink) {
  document.body.append(element('footer', { class: 'foot no-print' }, element('div', {}, unitsChoice('system-foot'))));
} else {
  layFrame('sheet');
  get(`units/${part(unitId)}/sheet-links`).then(showLinks).catch(() => undefined);
}
document.addEventListener('units-chosen', load);
load();

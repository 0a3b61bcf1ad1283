// The code for the unit's sticker: a phone's own camera reads it and opens the unit's visit page.

import { element, fill } from '../shared/dom.js';
import { part } from '../shared/api.js';

/** Prints the code without the rest of the page. */
function printAlone() {
  document.body.classList.add('sticker-alone');
  window.addEventListener('afterprint', () => document.body.classList.remove('sticker-alone'), { once: true });
  window.print();
}

/** Folded away until somebody wants to print it. */
export function showSticker(place, unit) {
  const address = new URL(`../u/${part(unit.id)}`, location.href).href;
  const source = `../api/units/${part(unit.id)}/sticker.svg?scheme=${location.protocol.replace(':', '')}`;
  fill(place, element('details', {}, element('summary', {}, 'Sticker'),
    element('div', { class: 'sticker' }, element('img', { src: source, alt: `Code that opens ${address}`, width: 160, height: 160 }),
      element('p', {}, element('b', {}, unit.label)), element('p', { class: 'small' }, address)),
    element('div', { class: 'buttons' }, element('button', { type: 'button', onclick: printAlone }, 'Print the sticker')),
    element('p', { class: 'quiet no-print' }, 'The phone’s own camera opens the unit’s visit page by it. It holds the address by which you opened this page: open it by the one that phones reach.')));
}

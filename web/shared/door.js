// What the pages before the door share: a head without links, and passwords that can be looked at.

import { byId, element } from './dom.js';

/** Lays a head that leads nowhere yet. */
export function layDoor() {
  document.body.prepend(element('a', { class: 'skip', href: '#main' }, 'To the content'),
    element('header', { class: 'head' }, element('div', {}, element('span', { class: 'name' }, 'Longsummer'))));
}

/** A box under some passwords that shows what was typed in them. */
export function offerToShow(placeId, ...passwordIds) {
  const boxes = passwordIds.map(byId);
  byId(placeId).append(element('label', {}, element('input', { type: 'checkbox', onchange: event => {
    for (const box of boxes) box.type = event.target.checked ? 'text' : 'password';
  } }), 'Show what I type'));
}

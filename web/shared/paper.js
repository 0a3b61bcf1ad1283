// What every printed page has: whose paper it is, above; when and from which address it was printed, below.

import { element } from './dom.js';
import { recordedText } from './words.js';

const line = (text, before = '') => (text ? element('p', { dir: 'auto' }, before, text) : '');

/** Lays the head and foot that are seen on paper only; `business` as the server sends it. */
export function layPaper(business) {
  const said = business.name || business.address || business.telephone || business.licence_number || business.logo;
  if (said) {
    document.body.prepend(element('div', { class: 'paper-head', 'aria-hidden': 'true' },
      business.logo ? element('img', { src: business.logo, alt: '' }) : '',
      element('div', {}, element('p', { class: 'paper-name', dir: 'auto' }, business.name),
        business.address.split('\n').map(text => line(text)), line(business.telephone, 'Telephone '), line(business.licence_number, 'Licence '))));
  }
  const foot = element('p', { class: 'paper-foot', 'aria-hidden': 'true' });
  document.body.append(foot);
  window.addEventListener('beforeprint', () => { foot.textContent = `Printed ${recordedText(new Date().toISOString())} · ${location.href}`; });
}

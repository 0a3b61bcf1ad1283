// What each fault does to split, amps and cooling, and what tells it from the others.

import { byId, element, fill, terms } from '../shared/dom.js';
import { get } from '../shared/api.js';
import { cautionBox } from '../shared/cautions.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { system } from '../shared/reader.js';

const capital = text => text[0].toUpperCase() + text.slice(1);

function show({ weather, signs, cautions }) {
  fill(byId('about'), `Against the same unit, clean and sound, in the weather of the season (${weather}), by the time that the fault has taken a tenth of the cooling or added a tenth to the amps. It says what to look for; which it is, a unit’s own history and readings say.`);
  fill(byId('signs'), signs.map(sign => element('section', { 'aria-labelledby': sign.fault }, element('h2', { id: sign.fault }, capital(sign.phrase)),
    terms([['Split', sign.split_change], ['Amps', sign.amps_change], ['Cooling', sign.cooling_change], ['Told by', sign.told_by], ['Cured by this work', sign.cure]]))));
  fill(byId('cautions'), cautionBox(cautions));
}

const ask = () => get('signs', { system: system() }).then(show).catch(refusal => sayFailure(byId('failure'), refusal));

layFrame('signs');
document.addEventListener('units-chosen', ask);
ask();

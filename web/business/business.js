// Whose paper it is.

import { byId, element, fill } from '../shared/dom.js';
import { get, post, remove, sendBytes } from '../shared/api.js';
import { fillForm, onSubmit } from '../shared/form.js';
import { layFrame, sayFailure } from '../shared/frame.js';
import { reduced } from '../shared/pictures.js';
import { clearProblems, showProblems } from '../shared/problems.js';

const form = byId('form');
const LONGEST = 600;

function showPaper({ name, address, telephone, licence_number: licence, logo }) {
  const any = name || address || telephone || licence || logo;
  fill(byId('seen'), any ? [logo ? element('img', { src: logo, alt: 'Logo' }) : '', element('div', {}, element('p', { dir: 'auto' }, element('strong', {}, name)),
    address.split('\n').map(line => element('p', { dir: 'auto' }, line)), telephone ? element('p', {}, `Telephone ${telephone}`) : '',
    licence ? element('p', {}, `Licence ${licence}`) : '')] : element('p', {}, 'Nothing yet: printed pages carry no head.'));
}

function show(business) {
  fillForm(form, business);
  form.hidden = false;
  fill(byId('logo'), business.logo ? element('div', { class: 'buttons' }, element('img', { src: business.logo, alt: 'The logo as it is now' }),
    element('button', { type: 'button', onclick: () => act(() => remove('business/logo')) }, 'Take the logo out')) : element('p', { class: 'quiet' }, 'No logo yet.'));
  showPaper(business);
}

async function act(step) {
  clearProblems(form, byId('problems'));
  try {
    show(await step());
    byId('done').textContent = 'Kept.';
  } catch (refusal) {
    showProblems(form, byId('problems'), refusal.problems ?? [{ field: '', given: '', limit: 'That did not work.', remedy: 'Try again.' }]);
  }
}

async function sendLogo({ target }) {
  const [file] = target.files;
  if (!file) return;
  await act(async () => sendBytes('business/logo', {}, await reduced(file, LONGEST, { type: 'image/png' })));
  target.value = '';
}

layFrame('business', { withUnits: false });
byId('logo-file').addEventListener('change', sendLogo);
onSubmit(form, byId('problems'), async boxes => {
  show(await post('business', { boxes }));
  byId('done').textContent = 'Kept.';
});
get('business').then(show).catch(refusal => sayFailure(byId('failure'), refusal));

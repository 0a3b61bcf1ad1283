// Photos taken with a visit: made smaller here, kept on this device until the visit is on the server.

import { byId, element, fill } from '../shared/dom.js';
import { newId } from '../shared/api.js';
import { reduced } from '../shared/pictures.js';
import { dropPhoto, keepPhoto, photosKept } from '../shared/pocket.js';

const LONGEST = 1600;
const SUBJECTS = [['plate', 'the plate'], ['coil', 'a coil'], ['other', 'something else']];

let visitId;
let changed = () => {};
let own = [];
let addresses = [];

export const photoCount = () => own.length;

const subject = () => document.querySelector('[name=photo-subject]:checked').value;
const say = text => { byId('photo-said').textContent = text; };

async function take({ target }) {
  const [file] = target.files;
  if (!file) return;
  try {
    await keepPhoto({ id: newId(), visit_id: visitId, subject: subject(), by: byId('technician').value, blob: await reduced(file, LONGEST), draft: true });
    say('');
  } catch (refusal) {
    say(refusal.problems ? `${refusal.problems[0].limit} ${refusal.problems[0].remedy}` : 'This device has no room for the photo.');
  }
  target.value = '';
  await show();
}

async function show() {
  own = (await photosKept()).filter(photo => photo.visit_id === visitId);
  addresses.forEach(URL.revokeObjectURL);
  addresses = own.map(photo => URL.createObjectURL(photo.blob));
  fill(byId('photo-list'), own.map((photo, index) => {
    const text = SUBJECTS.find(([value]) => value === photo.subject)[1];
    return element('figure', {}, element('img', { src: addresses[index], alt: `Photo of ${text}` }), element('button', { type: 'button', onclick: async () => {
      await dropPhoto(photo.id);
      await show();
    } }, `Leave out ${text}`));
  }));
  changed();
}

/** Lays the photo part of the form; `onChange` is told when there is one more or one less. */
export async function layPhotos(id, onChange) {
  visitId = id;
  changed = onChange;
  fill(byId('photos'), element('fieldset', { class: 'look' }, element('legend', {}, 'Photo of'), element('div', { class: 'choices brief even three' },
    SUBJECTS.map(([value, text], index) => element('label', {}, element('input', { type: 'radio', name: 'photo-subject', value, checked: index === 0 }), text)))),
  element('label', { class: 'take' }, element('input', { type: 'file', accept: 'image/*', id: 'photo-file' }), 'Take or choose a photo'),
  element('p', { id: 'photo-said', role: 'status', class: 'quiet' }), element('div', { class: 'thumbs', id: 'photo-list' }));
  byId('photo-file').addEventListener('change', take);
  await show();
}

/** The visit is saved: its photos go after it. */
export const releasePhotos = () => Promise.all(own.map(({ draft, ...photo }) => keepPhoto(photo)));

/** The visit is not going to be: its photos go too. */
export const dropPhotos = () => Promise.all(own.map(photo => dropPhoto(photo.id)));

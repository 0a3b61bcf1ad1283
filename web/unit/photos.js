// Photos of visits: seen small, opened large, added, and taken out with who and why.

import { element, fill, named } from '../shared/dom.js';
import { newId, part, post, sendBytes } from '../shared/api.js';
import { onSubmit } from '../shared/form.js';
import { reduced } from '../shared/pictures.js';
import { technician } from '../shared/reader.js';
import { dayText, recordedText } from '../shared/words.js';

export const LONGEST = 1600;
export const SUBJECTS = { plate: 'the plate', coil: 'a coil', other: 'something else' };

const when = (photo, visits) => dayText(visits.find(row => row.id === photo.visit_id)?.at ?? '');

function figure(photo, visits) {
  const text = `${SUBJECTS[photo.subject]}, ${when(photo, visits)}`;
  if (photo.removal) {
    return element('figure', { class: 'photo gone' }, element('figcaption', {}, `Photo of ${text}: taken out by `, named(photo.removal.by), `, `
      + `${recordedText(photo.removal.at)}: `, named(photo.removal.reason)));
  }
  return element('figure', { class: 'photo' }, element('a', { href: `../api/photos/${part(photo.id)}`, target: '_blank', rel: 'noopener' },
    element('img', { src: `../api/photos/${part(photo.id)}`, alt: `Photo of ${text}`, loading: 'lazy' })), element('figcaption', {}, text));
}

/** All photos of a unit, latest visit first. */
export function photoStrip(photos, visits) {
  if (!photos.length) return element('p', { class: 'quiet' }, 'No photo yet. They are taken with a visit: the plate, the coil, what was odd.');
  return element('div', { class: 'photos' }, photos.map(photo => figure(photo, visits)));
}

/** Sends one picture, made smaller. */
export async function sendPhoto(visitId, { id, blob, subject }, by) {
  return sendBytes(`visits/${part(visitId)}/photos`, { id, subject, by }, blob);
}

function removeForm(photo) {
  const problems = element('div');
  const form = element('form', { novalidate: true }, problems,
    element('div', { class: 'field' }, element('label', { for: `by-${photo.id}` }, 'Who you are'), element('input', { type: 'text', id: `by-${photo.id}`, name: 'by', value: technician() })),
    element('div', { class: 'field' }, element('label', { for: `reason-${photo.id}` }, 'Why it is taken out'), element('input', { type: 'text', id: `reason-${photo.id}`, name: 'reason' })),
    element('button', {}, 'Take this photo out'));
  onSubmit(form, problems, async boxes => {
    await post(`photos/${part(photo.id)}/removal`, boxes);
    location.reload();
  });
  return element('details', {}, element('summary', {}, `Take out the photo of ${SUBJECTS[photo.subject]}`), form);
}

/** The photos of one visit, with the ways to add one and to take one out. */
export function visitPhotos(photos, visits, visitId) {
  const own = photos.filter(photo => photo.visit_id === visitId);
  const said = element('p', { role: 'status' });
  const subject = element('select', { id: 'photo-subject', name: 'subject' }, Object.entries(SUBJECTS).map(([value, text]) => element('option', { value }, text)));
  const file = element('input', { type: 'file', id: 'photo-file', accept: 'image/*' });
  file.addEventListener('change', async () => {
    if (!file.files[0]) return;
    said.textContent = 'Sending …';
    try {
      await sendPhoto(visitId, { id: newId(), blob: await reduced(file.files[0], LONGEST), subject: subject.value }, technician());
      location.reload();
    } catch (refusal) {
      fill(said, (refusal.problems ?? [{ limit: 'It could not be sent.', remedy: 'Try again.' }]).map(({ limit, remedy }) => `${limit} ${remedy} `));
    }
  });
  return element('details', { class: 'no-print', open: own.length > 0 }, element('summary', {}, own.length ? `Photos (${own.length})` : 'Photos'),
    own.length ? photoStrip(own, visits) : '', element('div', { class: 'pairs' },
      element('div', { class: 'field' }, element('label', { for: 'photo-subject' }, 'It shows'), subject),
      element('div', { class: 'field' }, element('label', { for: 'photo-file' }, 'Add a photo'), file)), said,
    own.filter(photo => !photo.removal).map(removeForm));
}

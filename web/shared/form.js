// What forms share: texts by the names of their boxes, in and out, and sending them with all problems shown at once.

import { clearProblems, showProblems } from './problems.js';
import { rememberTechnician, technician } from './reader.js';

const asList = value => (value === undefined ? [] : [].concat(value));

/** The texts of a form by the names of its boxes; boxes that share a name are joined with commas. */
export function texts(form) {
  const all = {};
  for (const [name, value] of new FormData(form)) {
    if (typeof value !== 'string') continue;
    all[name] = name in all ? `${all[name]},${value}` : value;
  }
  return all;
}

/** Puts texts into the boxes they are named after; a box without a text keeps what it has. */
export function fillForm(form, boxes) {
  for (const box of form.elements) {
    const text = boxes[box.name];
    if (!box.name || text === undefined) continue;
    if (box.type === 'radio') box.checked = box.value === text;
    else if (box.type === 'checkbox') box.checked = asList(text).join(',').split(',').includes(box.value);
    else if (box.type !== 'file') box.value = text;
  }
}

/** Fills in who is working here, where nobody is named yet. */
export function fillWho(form) {
  const box = form.elements.by;
  if (box && !box.value) box.value = technician();
}

/** Sends the form's texts when it is submitted, once at a time; problems stand above it and at the boxes. */
export function onSubmit(form, problems, send) {
  form.addEventListener('submit', async event => {
    event.preventDefault();
    const press = form.querySelector('button.main, button:not([type=button])');
    clearProblems(form, problems);
    press.disabled = true;
    try {
      const boxes = texts(form);
      await send(boxes);
      if (boxes.by) rememberTechnician(boxes.by);
    } catch (refusal) {
      if (!refusal.problems) console.error(refusal);
      showProblems(form, problems, refusal.problems ?? [{ field: '', given: '', limit: 'This page failed at it.', remedy: 'Load the page again and try once more.' }]);
    } finally {
      press.disabled = false;
    }
  });
}

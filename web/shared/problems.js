// Shows all problems of a form at once: in a list above it, and beside each box.

import { byId, element, fill } from './dom.js';

const boxOf = (form, field) => [...form.elements].find(box => box.name && (box.name === field || box.dataset.box === field));

const label = box => box.dataset.label ?? (box.type === 'radio' ? box.closest('fieldset')?.querySelector('legend') : box.labels?.[0])
  ?.firstChild?.textContent?.trim() ?? box.name;

const sayProblem = problem => `${problem.given ? `“${problem.given}”: ` : ''}${problem.limit} ${problem.remedy}`;

/** Takes back what was said before. */
export function clearProblems(form, list) {
  fill(list);
  for (const box of form.elements) box.removeAttribute('aria-invalid');
}

/** Lists the problems with a link to each box and moves the focus to the list. */
export function showProblems(form, list, problems) {
  clearProblems(form, list);
  const items = problems.map(problem => {
    const box = problem.field ? boxOf(form, problem.field) : undefined;
    if (!box) return element('li', {}, sayProblem(problem));
    box.setAttribute('aria-invalid', 'true');
    for (let fold = box.closest('details'); fold; fold = fold.parentElement?.closest('details')) fold.open = true;
    if (!box.id) box.id = `box-${problem.field}`;
    return element('li', {}, element('a', { href: `#${box.id}` }, label(box)), ` ${sayProblem(problem)}`);
  });
  const heading = problems.length === 1 ? 'One thing to put right' : `${problems.length} things to put right`;
  const shown = element('div', { class: 'problems', role: 'alert', tabindex: '-1' }, element('h2', {}, heading), element('ul', {}, items));
  fill(list, shown);
  shown.focus();
}

/** Writes a remark under one box; an empty text takes it back. */
export function sayAt(boxId, ...texts) {
  const place = byId(`${boxId}-question`);
  if (place) fill(place, ...texts);
}

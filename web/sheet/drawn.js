// Draws a picture of the sheet from its strokes, as vectors.

import { element } from '../shared/dom.js';
import { inDecimals } from '../shared/numbers.js';
import { withDays } from '../shared/words.js';

const SVG = 'http://www.w3.org/2000/svg';

function stroke(name, attributes, text) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text) made.textContent = text;
  return made;
}

const KINDS = {
  line: ({ x, y, x2, y2, size }) => stroke('line', { x1: x, y1: y, x2, y2, 'stroke-width': size }),
  dashed: ({ x, y, x2, y2, size }) => stroke('line', { x1: x, y1: y, x2, y2, 'stroke-width': size, 'stroke-dasharray': '3 3' }),
  box: ({ x, y, x2, y2 }) => stroke('rect', { x, y, width: x2, height: y2, class: 'shade' }),
  dot: ({ x, y, x2 }) => stroke('circle', { cx: x, cy: y, r: x2, class: 'dot' }),
  ring: ({ x, y, x2 }) => stroke('circle', { cx: x, cy: y, r: x2, class: 'ring' }),
  text: ({ x, y, size, said, anchor }) => stroke('text', { x, y, 'font-size': size, 'text-anchor': anchor }, inDecimals(said)),
};

/** A picture with its title, and the same in words for those who cannot see it. */
export function drawn({ title, alternative, width, height, marks }) {
  const picture = stroke('svg', { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': withDays(alternative) });
  picture.append(...marks.map(mark => KINDS[mark.kind](mark)));
  return element('figure', {}, element('figcaption', {}, title), picture);
}

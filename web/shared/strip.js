// One reading against what was expected, drawn: the band is expected ± two standard uncertainties, the mark is what was read.

const SVG = 'http://www.w3.org/2000/svg';

function shape(name, attributes) {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

/** @param judged {measured, expected, expanded} numbers with unit and text, as the server sends them; measured may be absent */
export function strip(judged, name) {
  const { measured, expected, expanded } = judged;
  const reach = 2.2 * expanded.number;
  const place = number => 150 + 140 * Math.max(-1, Math.min(1, (number - expected.number) / reach));
  const low = place(expected.number - expanded.number);
  const high = place(expected.number + expanded.number);
  const drawn = shape('svg', { class: 'strip', viewBox: '0 0 300 36', role: 'img', preserveAspectRatio: 'none',
    'aria-label': `${name}: ${measured ? `${measured.text} read, ` : ''}${expected.text} expected, ± ${expanded.text}` });
  drawn.append(shape('line', { class: 'axis', x1: 4, x2: 296, y1: 18, y2: 18 }),
    shape('rect', { class: 'range', x: low, width: high - low, y: 6, height: 24 }),
    shape('line', { class: 'middle', x1: 150, x2: 150, y1: 6, y2: 30 }));
  if (measured) {
    const x = place(measured.number);
    drawn.append(shape('rect', { class: 'read', x: x - 3, width: 6, y: 2, height: 32 }));
  }
  return drawn;
}

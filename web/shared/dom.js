// Makes elements. Text is always set as text, never as markup.

const present = children => children.flat(Infinity).filter(child => child !== undefined && child !== null && child !== '')
  .map(child => (child instanceof Node ? child : tied(String(child))));

/** Keeps a number and its unit on one line, and ± with what follows it. */
const tied = text => text.replace(/(\d) (?=(%|°F|°C|A|V|min|µF|Btu\/h|ft|m)(?![A-Za-z]))/g, '$1\u00a0').replace(/± /g, '±\u00a0');

/** element('p', {class: 'quiet'}, 'text', otherElement); an attribute that is undefined, null or false is left out. */
export function element(name, attributes = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (key.startsWith('on')) made.addEventListener(key.slice(2), value);
    else made.setAttribute(key, value === true ? '' : value);
  }
  made.append(...present(children));
  return made;
}

/** A name that people gave, in any script and direction, kept apart from the text around it. */
export const named = text => (text ? element('bdi', {}, text) : '');

/** Several of them with a dot between; empty ones are left out. */
export const namedList = texts => texts.filter(Boolean).flatMap((text, index) => [index ? ' · ' : '', named(text)]);

export const byId = id => document.getElementById(id);

/** Puts these children in the place of whatever the element held. */
export function fill(target, ...children) {
  target.replaceChildren(...present(children));
  return target;
}

/** A list of terms and what they are; pairs without a value are left out. */
export function terms(pairs) {
  return element('dl', {}, pairs.filter(([, value]) => value !== undefined && value !== null && value !== '')
    .map(([term, value]) => [element('dt', {}, term), element('dd', {}, value)]));
}

/** Links of which a phone shows those to keep, and the others when asked for more; `keeps` is asked with a link and its place. */
export function folded(links, keeps) {
  links.forEach((link, place) => link.classList.toggle('rest', !keeps(link, place)));
  const more = element('button', { type: 'button', class: 'quiet fold', 'aria-expanded': 'false', onclick: ({ currentTarget: button }) => {
    const all = button.parentElement.classList.toggle('all');
    button.setAttribute('aria-expanded', String(all));
    button.textContent = all ? 'Less' : 'More';
  } }, 'More');
  return [...links, more];
}

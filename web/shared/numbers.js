// Numbers as the reader writes them. The server and the core say numbers with a decimal point; here it becomes the reader's own sign.

import { decimalSign } from './reader.js';

/** Members of an answer that are numbers or sentences made by Longsummer. */
const SAID = new Set(['text', 'sentence', 'finding', 'severity', 'impact', 'before_and_after', 'settles', 'cannot_tell', 'input', 'effect', 'likely', 'limit',
  'remedy', 'expanded', 'altitude', 'waiting', 'quitting', 'advice', 'settling', 'undecided', 'flips', 'assumed', 'cures', 'quits', 'paragraphs',
  'note_of_money', 'weather']);
/** Members with what people typed, which stays as typed. */
const TYPED = new Set(['plate', 'boxes', 'typed', 'given', 'notes', 'label']);

/** A number or a sentence with numbers, in the reader's decimals. */
export const inDecimals = text => (decimalSign() === 'comma' ? text.replace(/(\d)\.(?=\d)/g, '$1,') : text);

/** A number with so many decimals. */
export const numberText = (number, decimals) => inDecimals(number.toFixed(decimals));

function walk(value, said) {
  if (typeof value === 'string') return said ? inDecimals(value) : value;
  if (Array.isArray(value)) return value.map(item => walk(item, said));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, TYPED.has(name) ? member : walk(member, SAID.has(name))]));
}

/** A whole answer in the reader's decimals; untouched where they are points. */
export const inReadersNumbers = answer => (decimalSign() === 'comma' ? walk(answer, false) : answer);

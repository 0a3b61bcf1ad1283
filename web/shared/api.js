// Asks the server. Whatever goes wrong arrives as one shape: a Refusal with a list of problems.

import { inReadersNumbers } from './numbers.js';
import { system, technician } from './reader.js';

export class Refusal extends Error {
  constructor(status, problems, answer) {
    super(problems.map(problem => problem.limit).join(' '));
    this.status = status;
    this.problems = problems;
    this.answer = answer;
  }
}

function address(path, query) {
  const search = new URLSearchParams({ system: system() });
  for (const [key, value] of Object.entries(query)) {
    if (Array.isArray(value)) value.forEach(one => search.append(key, one));
    else if (value !== undefined && value !== null && value !== '') search.set(key, value);
  }
  return `../api/${path}?${search}`;
}

const UNREACHABLE = { field: '', given: '', limit: 'Longsummer did not answer.',
  remedy: 'Check the connection and try again; what you typed is still here.' };

/** This page, as the sign-in page may lead back to it: its folder and what follows. */
const thisPage = () => `${location.pathname.split('/').at(-2)}/${location.search}${location.hash}`;

/** Leads to the sign-in page when somebody only looks; what somebody sends stays on his page, and he is told. */
function leadToSignIn(method) {
  if (method === 'GET') location.assign(`../sign-in/?${new URLSearchParams({ to: thisPage() })}`);
}

async function ask(method, path, query, options) {
  let response;
  const headers = { Accept: 'application/json', 'Longsummer-Name': encodeURIComponent(technician()), ...options.headers };
  try {
    response = await fetch(address(path, query), { method, ...options, headers });
  } catch (failure) {
    if (failure.name === 'AbortError') throw failure;
    throw new Refusal(0, [UNREACHABLE]);
  }
  const answer = await response.json().catch(() => undefined);
  if (response.ok && answer !== undefined) return inReadersNumbers(answer);
  if (response.status === 401 && !options.atTheDoor) leadToSignIn(method);
  throw new Refusal(response.status, inReadersNumbers(answer)?.problems ?? [{ ...UNREACHABLE, limit: `Longsummer answered ${response.status}.` }], answer);
}

export const get = (path, query = {}, options = {}) => ask('GET', path, query, options);

export const post = (path, body, options = {}) =>
  ask('POST', path, {}, { ...options, body: JSON.stringify(body), headers: { 'Content-Type': 'application/json' } });

/** Asks for a file and hands it to the reader under a name. */
export async function postForFile(path, body, name) {
  const response = await fetch(address(path, {}), { method: 'POST', body: JSON.stringify(body),
    headers: { 'Content-Type': 'application/json', 'Longsummer-Name': encodeURIComponent(technician()) } }).catch(() => { throw new Refusal(0, [UNREACHABLE]); });
  if (!response.ok) {
    const answer = await response.json().catch(() => undefined);
    throw new Refusal(response.status, inReadersNumbers(answer)?.problems ?? [{ ...UNREACHABLE, limit: `Longsummer answered ${response.status}.` }], answer);
  }
  const link = document.createElement('a');
  link.href = URL.createObjectURL(await response.blob());
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Signing in: a refusal is for the page itself to say. */
export const signIn = form => ask('POST', 'session', {}, { atTheDoor: true, body: JSON.stringify(form), headers: { 'Content-Type': 'application/json' } });

/** Sends the bytes of one picture. */
export const sendBytes = (path, query, blob, options = {}) => ask('POST', path, query, { ...options, body: blob,
  headers: { 'Content-Type': blob.type || 'application/octet-stream' } });

/** Sends a form with files. */
export const send = (path, formData) => ask('POST', path, {}, { body: formData });

export const remove = path => ask('DELETE', path, {}, {});

/** One part of a path, such as an id. */
export const part = encodeURIComponent;

/** An identifier made here, so that sending twice stores once. (crypto.randomUUID needs a secure context.) */
export function newId() {
  const bytes = crypto.getRandomValues(new Uint8Array(10));
  return 'v' + Array.from(bytes, byte => byte.toString(16).padStart(2, '0')).join('');
}

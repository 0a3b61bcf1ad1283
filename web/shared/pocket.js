// What this device keeps by itself: units with their histories, what was typed, what waits to be sent. Every write is flushed to the
// disk before it is called kept; one that fails says so.

const NAME = 'longsummer';
const STORES = { units: 'unit_id', outbox: 'id', drafts: 'key', facts: 'name' };

let opened;

function open() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      for (const [name, keyPath] of Object.entries(STORES)) request.result.createObjectStore(name, { keyPath });
    };
    request.onsuccess = () => {
      request.result.onversionchange = () => request.result.close();
      resolve(request.result);
    };
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  }).catch(failure => {
    opened = undefined;
    throw failure;
  });
  return opened;
}

/** Runs `work` on one store, and answers its request's result when the transaction is over: on disk, or it throws. */
async function within(name, mode, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    const transaction = database.transaction(name, mode, { durability: 'strict' });
    const request = work(transaction.objectStore(name));
    transaction.oncomplete = () => resolve(request?.result);
    transaction.onabort = () => reject(transaction.error ?? new Error('aborted'));
  });
}

const read = (name, key) => within(name, 'readonly', store => store.get(key));
const readAll = name => within(name, 'readonly', store => store.getAll());
const write = (name, value) => within(name, 'readwrite', store => store.put(value));
const drop = (name, key) => within(name, 'readwrite', store => store.delete(key));

// Units with their histories

export const unitKept = id => read('units', id);
export const unitsKept = () => readAll('units').catch(() => []);
export const keepUnit = row => write('units', row);

/** Puts what the server sent of some depots in the place of what was kept; units kept for another reason stay. */
export async function keepFleet({ units, closings, as_of_ms: asOf }, depots) {
  const before = await unitsKept();
  const ids = new Set(units.map(row => row.unit_id));
  await within('units', 'readwrite', store => {
    before.filter(row => row.of_depot && !ids.has(row.unit_id)).forEach(row => store.delete(row.unit_id));
    units.forEach(row => store.put({ ...row, as_of_ms: asOf, of_depot: true }));
  });
  await write('facts', { name: 'fleet', closings, as_of_ms: asOf, depots });
}

/** Which depots are kept and since when: {depots, as_of_ms, closings}, or undefined. */
export const fleetKept = () => read('facts', 'fleet').catch(() => undefined);

export async function dropFleet() {
  const before = await unitsKept();
  await within('units', 'readwrite', store => { before.filter(row => row.of_depot).forEach(row => store.delete(row.unit_id)); });
  await drop('facts', 'fleet');
}

// What was typed and not yet saved

export const draftKept = key => read('drafts', key).then(row => row?.draft).catch(() => undefined);
export const keepDraft = (key, draft) => write('drafts', { key, draft });
export const dropDraft = key => drop('drafts', key).catch(() => undefined);

// What waits to be sent

export const outbox = () => readAll('outbox').then(items => items.sort((a, b) => a.saved_at - b.saved_at));
export const outboxItem = id => read('outbox', id);
export const keepItem = item => write('outbox', item).then(tellPage);
export const dropItem = id => drop('outbox', id).then(tellPage);

const otherTabs = new BroadcastChannel('longsummer-outbox');
const tellThisPage = () => document.dispatchEvent(new CustomEvent('outbox-changed'));
otherTabs.onmessage = tellThisPage;

/** Whatever shows how much waits looks again, here and in other tabs. */
function tellPage() {
  tellThisPage();
  otherTabs.postMessage('changed');
}

/** Everything, as when somebody signs out: only when nothing waits, or when it is to be lost knowingly. */
export async function dropEverything() {
  for (const name of Object.keys(STORES)) await within(name, 'readwrite', store => store.clear());
}

/** The units and their histories, when somebody signs out and something still waits to be sent. */
export async function dropUnits() {
  for (const name of ['units', 'facts']) await within(name, 'readwrite', store => store.clear());
}

/** Asks the browser not to clear this when space runs short. @returns whether it agreed */
export const keepForGood = () => navigator.storage?.persist?.().catch(() => false) ?? Promise.resolve(false);

/** Look-alikes in handwriting: O and 0, I and 1, S and 5; any case, no spaces or signs. */
const lookAlike = text => text.toUpperCase().replace(/[^\p{L}\p{N}]/gu, '').replaceAll('O', '0').replaceAll('I', '1').replaceAll('S', '5');

/** Units kept here whose name, serial, vehicle or owner contains this. */
export async function unitsLike(text) {
  const wanted = text.trim().toLowerCase();
  const alike = lookAlike(text);
  return (await unitsKept()).filter(row => {
    const all = [row.unit_id, row.unit.label, row.serial, row.vehicle, row.roof_position, row.owner].join('\n').toLowerCase();
    return all.includes(wanted) || (alike && lookAlike(row.serial ?? '').includes(alike));
  }).sort((a, b) => a.unit.label.localeCompare(b.unit.label, undefined, { numeric: true }));
}

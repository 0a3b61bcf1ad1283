// Sends photos that wait on this device, once their visit is on the server; each under the id it was given here.

import { part, sendBytes } from './api.js';
import { dropPhoto, outboxItem, photosKept } from './pocket.js';

const PATIENCE = 60_000;

/** Its visit was thrown away here, and the server never had it. */
const orphaned = async (photo, refusal) => refusal.status === 404 && !(await outboxItem(photo.visit_id).catch(() => undefined));

async function sendOne(photo) {
  const { id, visit_id: visitId, subject, by, blob } = photo;
  try {
    await sendBytes(`visits/${part(visitId)}/photos`, { id, subject, by }, blob, { signal: AbortSignal.timeout(PATIENCE) });
    await dropPhoto(id);
    return 'sent';
  } catch (refusal) {
    if (refusal.status === 422 || refusal.status === 409 || await orphaned(photo, refusal)) {
      await dropPhoto(id);
      return 'refused';
    }
    return 'waiting';
  }
}

/** @returns {sent, refused, waiting} how many; those of visits that are typed only wait */
export async function sendPhotos(isTyped = () => false) {
  const counts = { sent: 0, refused: 0, waiting: 0 };
  for (const photo of await photosKept()) {
    if (photo.draft && !isTyped(photo.visit_id)) continue;
    const waits = await outboxItem(photo.visit_id).catch(() => undefined);
    counts[waits && waits.state !== 'sent' ? 'waiting' : await sendOne(photo)] += 1;
  }
  return counts;
}

// One quiet line for as long as units are judged again, after a change of the method or of a large depot.

const LOOKING_EVERY_MS = 3000;

/** Shows the line while it goes on, and asks again until it is over. */
export async function showJudgedAgain(line) {
  const health = await fetch('../health', { headers: { Accept: 'application/json' } }).then(answer => answer.json()).catch(() => ({}));
  const percent = health.judged_again_percent;
  line.hidden = percent === undefined;
  if (line.hidden) return;
  line.textContent = `All units are being judged again: ${percent} % done. You can work meanwhile; what is listed here may still change.`;
  setTimeout(() => showJudgedAgain(line), LOOKING_EVERY_MS);
}

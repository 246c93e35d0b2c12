// Timers as plain data on the wall clock: a timer is the moment at which it ends, so a locked
// phone, a sleeping tab or a reload cannot slow it. The only time written outside Python, since it
// changes every second.

/**
 * ends, stopped: ms since 1970; length: ms; told: a person has been told that it is over
 * @typedef {{ id: string, label: string, length: number, ends: number, stopped: number | null,
 *   told: boolean }} Timer
 */

const SECOND = 1_000;
const MINUTE = 60 * SECOND;
const DAY = 24 * 60 * MINUTE;
/** ms that a stopped timer can be put back */
export const REGRET = 10 * SECOND;
/** ms after which one that is over, and that nobody dismissed, is forgotten */
const FORGOTTEN = DAY / 2;
const MOST = 12;
const LONGEST_LABEL = 80;

/**
 * @param {readonly Timer[]} timers
 * @param {{ label: string, minutes: number }} wanted
 * @param {number} now
 * @returns {Timer[]}
 */
export function withTimer(timers, { label, minutes }, now) {
  const length = minutes * MINUTE;
  const fits = Number.isFinite(length) && length > 0 && length <= DAY && timers.length < MOST;
  if (!fits) return [...timers];
  const taken = new Set(timers.map(({ id }) => id));
  let count = 1;
  while (taken.has(`${now}-${count}`)) count += 1;
  return [
    ...timers,
    {
      id: `${now}-${count}`,
      label: label.slice(0, LONGEST_LABEL),
      length,
      ends: now + length,
      stopped: null,
      told: false,
    },
  ];
}

/**
 * Timers as they were kept; what does not look like one is left out.
 * @param {string | null} text
 * @param {number} now
 * @returns {Timer[]}
 */
export function readTimers(text, now) {
  if (!text) return [];
  try {
    const kept = JSON.parse(text);
    return Array.isArray(kept) ? tidied(kept.filter(isTimer).slice(0, MOST), now) : [];
  } catch (error) {
    if (error instanceof SyntaxError) return [];
    throw error;
  }
}

/**
 * @param {any} each
 * @returns {each is Timer}
 */
function isTimer(each) {
  return (
    typeof each === "object" &&
    each !== null &&
    typeof each.id === "string" &&
    typeof each.label === "string" &&
    each.label.length <= LONGEST_LABEL &&
    Number.isFinite(each.ends) &&
    Number.isFinite(each.length) &&
    each.length > 0 &&
    each.length <= DAY &&
    typeof each.told === "boolean" &&
    (each.stopped === null || Number.isFinite(each.stopped))
  );
}

/**
 * Without those stopped for good, and those over for half a day. A clock set back cannot make one
 * longer than it was started with.
 * @param {readonly Timer[]} timers
 * @param {number} now
 * @returns {Timer[]}
 */
export function tidied(timers, now) {
  return timers
    .filter(({ ends, stopped }) =>
      stopped === null ? now - ends < FORGOTTEN : now - stopped < REGRET,
    )
    .map((timer) =>
      timer.ends - now > timer.length ? { ...timer, ends: now + timer.length } : timer,
    );
}

/**
 * The timers with one changed.
 * @param {readonly Timer[]} timers
 * @param {string} id
 * @param {(timer: Timer) => Timer | null} change  null takes it away
 * @returns {Timer[]}
 */
export function changed(timers, id, change) {
  return timers.flatMap((timer) => (timer.id === id ? (change(timer) ?? []) : [timer]));
}

/**
 * More time: from the end, or from now when it is over.
 * @param {Timer} timer
 * @param {number} minutes
 * @param {number} now
 * @returns {Timer}
 */
export function extended(timer, minutes, now) {
  const ends = Math.max(timer.ends, now) + minutes * MINUTE;
  return { ...timer, ends, length: Math.min(Math.max(timer.length, ends - now), DAY), told: false };
}

/**
 * @param {Timer} timer
 * @param {number} now
 */
export function isOver(timer, now) {
  return timer.stopped === null && now >= timer.ends;
}

/**
 * @param {Timer} timer
 * @param {number} now
 */
export function isRunning(timer, now) {
  return timer.stopped === null && now < timer.ends;
}

/**
 * The time left, or the time since it was over: "44:59", "1:02:03". What is left is rounded up: at
 * 0:01 there is up to a second.
 * @param {Timer} timer
 * @param {number} now
 */
export function written(timer, now) {
  const left = timer.ends - (timer.stopped ?? now);
  const seconds = left > 0 ? Math.ceil(left / SECOND) : Math.floor(-left / SECOND);
  const two = (/** @type {number} */ count) => String(count).padStart(2, "0");
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  return hours > 0
    ? `${hours}:${two(minutes)}:${two(seconds % 60)}`
    : `${minutes}:${two(seconds % 60)}`;
}

/**
 * ms until what is written changes.
 * @param {readonly Timer[]} timers
 * @param {number} now
 */
export function untilNextLook(timers, now) {
  const waits = timers.map(({ ends, stopped }) =>
    stopped === null
      ? (((ends - now) % SECOND) + SECOND) % SECOND || SECOND
      : Math.max(stopped + REGRET - now, 1),
  );
  return Math.min(SECOND, ...waits);
}

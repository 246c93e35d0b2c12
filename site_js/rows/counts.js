// One more, one less: the only arithmetic done outside Python, on whole numbers as people type
// them.

/**
 * A whole number, its thousands perhaps grouped, then anything that is no further digit ("280 +/-
 * 3").
 */
const WHOLE =
  /^\s*([+\u2212-]?(?:\d{1,3}(?:[.,'\u2019\u00a0\u2009\u202f ]\d{3})+|\d+))(?![.,/]?\d)(.*)$/s;

/**
 * The text after a step, or null where it begins with no whole number. Limits are Python's matter.
 * @param {string} text
 * @param {number} step
 * @returns {string | null}
 */
export function stepped(text, step) {
  if (text.trim() === "") return String(step);
  const found = WHOLE.exec(text);
  if (!found) return null;
  const number = Number((found[1] ?? "").replace("\u2212", "-").replace(/[^\d-]/g, ""));
  return `${number + step}${found[2] ?? ""}`;
}

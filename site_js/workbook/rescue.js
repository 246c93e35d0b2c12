// A copy of the workbook as a file where Python cannot make one, and whether a file holds every
// record. Pure.

import { sorted } from "../dom/files.js";

/**
 * The file as the book reads it. Without Python no record is checked, so all of them stand among
 * those that were not read: whoever reads the file checks each, and keeps as it is what cannot be
 * read there.
 * @param {unknown[]} records
 * @param {unknown} bench
 * @param {string} made  the day
 * @param {{ format: string, schema: number }} about
 */
export function rescueText(records, bench, made, { format, schema }) {
  const content = {
    format,
    schema,
    made,
    records: [],
    unread: records,
    ...(bench ? { bench } : {}),
  };
  return `${JSON.stringify(sorted(content), null, 1)}\n`;
}

/**
 * Why a file, as its text reads back, is no copy of these records; "" when it holds each of them as
 * it was saved last, and no other.
 * @param {string} text
 * @param {{ id: string, rev: string }[]} records
 */
export function notACopy(text, records) {
  /** @type {Map<string, string>} */
  let held;
  try {
    const { records: read, unread = [] } = JSON.parse(text);
    held = new Map([...read, ...unread].map(({ id, rev }) => [id, rev]));
  } catch {
    return "it does not read back";
  }
  const lost = records.filter(({ id, rev }) => !held.has(id) || held.get(id) !== rev).length;
  if (lost > 0)
    return lost === 1
      ? "one record is not in it as it stands here now"
      : `${lost} records are not in it as they stand here now`;
  return held.size > records.length ? "it holds records that are no longer here" : "";
}

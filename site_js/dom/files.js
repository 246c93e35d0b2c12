// A record as a file: made for download, read back with limits of size and depth. What is inside is
// Python's matter.

/** bytes; a bench record is a few kilobytes */
const LARGEST = 1_000_000;
/** lists and objects inside each other; a bench record has two */
const DEEPEST = 8;

/**
 * @param {unknown} content
 * @param {string} name
 */
export function saveAs(content, name) {
  saveBlob(
    new Blob([`${JSON.stringify(sorted(content), null, 2)}\n`], { type: "application/json" }),
    name,
  );
}

/**
 * @param {Blob} content
 * @param {string} name
 */
export function saveBlob(content, name) {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/**
 * Asks for a file. The control stands in the page meanwhile, since some browsers forget one that
 * stands nowhere.
 * @param {(file: File) => unknown} take
 */
export function chooseJson(take) {
  const picker = Object.assign(document.createElement("input"), {
    type: "file",
    accept: ".json,application/json",
    hidden: true,
  });
  picker.addEventListener("cancel", () => picker.remove());
  picker.addEventListener("change", () => {
    picker.remove();
    if (picker.files?.[0]) take(picker.files[0]);
  });
  document.body.append(picker);
  picker.click();
}

/**
 * @param {File} file
 * @returns {Promise<{ content: unknown } | { problem: string }>}
 */
export async function readJson(file) {
  if (file.size > LARGEST) return { problem: `${file.name} is too large for a bench record.` };
  try {
    const text = await file.text();
    if (deeperThan(text, DEEPEST))
      return {
        problem: `${file.name} is not a bench record (it is nested more than ${DEEPEST} deep).`,
      };
    return { content: JSON.parse(text) };
  } catch (error) {
    if (!(error instanceof SyntaxError || error instanceof DOMException)) throw error;
    return { problem: `${file.name} is not a bench record (it holds no JSON).` };
  }
}

/**
 * Whether lists and objects stand deeper inside each other in a JSON text, told before it is
 * parsed: what a browser still reads can be too deep to be written again, or for Python. What is no
 * JSON may get either answer.
 * @param {string} text
 * @param {number} most
 */
export function deeperThan(text, most) {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const letter = text[at];
    if (letter === '"') quoted = !quoted;
    else if (quoted) at += letter === "\\" ? 1 : 0;
    else if (letter === "[" || letter === "{") depth += 1;
    else if (letter === "]" || letter === "}") depth -= 1;
    if (depth > most) return true;
  }
  return false;
}

/**
 * Keys in order, so that two exports can be compared line by line.
 * @param {unknown} value
 * @returns {unknown}
 */
export function sorted(value) {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, inner]) => [key, sorted(inner)]),
  );
}

// Text to the clipboard.

/**
 * The clipboard needs a secure page and leave to write; the old command works nearly everywhere
 * else.
 * @param {string} text
 */
export async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch (error) {
    if (!(error instanceof DOMException || error instanceof TypeError)) throw error;
  }
  const focused = document.activeElement;
  const field = document.createElement("textarea");
  field.value = text;
  field.setAttribute("aria-hidden", "true");
  field.style.cssText = "position:fixed;top:0;opacity:0;font-size:16px";
  document.body.append(field);
  field.select();
  const done = document.execCommand("copy");
  field.remove();
  if (focused instanceof HTMLElement) focused.focus({ preventScroll: true });
  return done;
}

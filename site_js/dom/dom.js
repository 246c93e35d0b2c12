// Typed look-ups, so that the other files need no casts.

/**
 * The first match, or null when there is none of that class.
 * @template {Element} E
 * @param {ParentNode} root
 * @param {string} selector
 * @param {new () => E} kind
 * @returns {E | null}
 */
export function one(root, selector, kind) {
  const found = root.querySelector(selector);
  return found instanceof kind ? found : null;
}

/**
 * @template {Element} E
 * @param {ParentNode} root
 * @param {string} selector
 * @param {new () => E} kind
 * @returns {E[]}
 */
export function all(root, selector, kind) {
  /** @type {E[]} */
  const matches = [];
  for (const found of root.querySelectorAll(selector))
    if (found instanceof kind) matches.push(found);
  return matches;
}

/**
 * The element that an event started at, or its nearest ancestor that matches.
 * @param {Event} event
 * @param {string} selector
 * @returns {HTMLElement | null}
 */
export function startedAt(event, selector) {
  const found = event.target instanceof Element ? event.target.closest(selector) : null;
  return found instanceof HTMLElement ? found : null;
}

/**
 * @param {string} text
 * @param {string} [className]
 * @returns {HTMLButtonElement}
 */
export function button(text, className = "") {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = text;
  if (className) made.className = className;
  return made;
}

/**
 * Changes a text only when it differs: an unchanged live region must stay silent.
 * @param {Element | null} element
 * @param {string} text
 */
export function say(element, text) {
  if (element && element.textContent !== text) element.textContent = text;
  if (element instanceof HTMLElement) element.hidden = text === "";
}

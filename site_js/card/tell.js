// The line below a card's buttons: what became of the press.

import { one, say } from "../dom/dom.js";

/**
 * @param {Element} card
 * @param {string} text
 * @param {HTMLElement[]} [more]  what can be done about it
 */
export function tell(card, text, more = []) {
  let place = one(card, ".do + .said", HTMLElement);
  if (!place) {
    place = document.createElement("p");
    place.className = "said";
    place.setAttribute("role", "status");
    one(card, ".do", HTMLElement)?.after(place);
  }
  say(place, text);
  if (more.length > 0) place.append(...more.flatMap((each) => [" ", each]));
}

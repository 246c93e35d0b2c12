// The buttons under a card: copy its link, print it, start over.

import { copied } from "../dom/copy.js";
import { button, one } from "../dom/dom.js";
import { printAlone } from "../dom/print.js";
import { keepCard } from "./keep.js";
import { tell } from "./tell.js";

/** @typedef {import("./card.js").BenchCard} BenchCard */

/** @type {Record<string, (card: BenchCard, pressed: Element) => void | Promise<void>>} */
const ACTIONS = {
  "copy-link": copyLink,
  "print-card": printCard,
  "print-page": () => print(),
  "print-paper": printPaper,
  "start-over": startOver,
  keep: keepCard,
};

/**
 * @param {BenchCard} card
 * @param {AbortSignal} signal
 */
export function actOn(card, signal) {
  for (const pressed of card.querySelectorAll("[data-do]")) {
    const act = ACTIONS[pressed.getAttribute("data-do") ?? ""];
    if (act) pressed.addEventListener("click", () => void act(card, pressed), { signal });
  }
}

/** @param {BenchCard} card */
async function copyLink(card) {
  const partly = card.unsaved ? " It is for your last good values." : "";
  const { link } = card;
  if (await copied(link)) tell(card, `Link copied.${partly}`);
  else tell(card, `Copy this link: ${link}${partly}`);
}

/** @param {BenchCard} card */
async function printCard(card) {
  await printSheet(card, null);
}

/**
 * @param {BenchCard} card
 * @param {Element} pressed
 */
async function printPaper(card, pressed) {
  await printSheet(card, Number(pressed.getAttribute("data-paper")));
}

/**
 * @param {BenchCard} card
 * @param {number | null} paper  which of the card's own papers; null for the half-page sheet
 */
async function printSheet(card, paper) {
  const outcome = await card.sheet(paper);
  if (outcome === null || "problem" in outcome) {
    tell(
      card,
      `That sheet needs the calculator: ${outcome?.problem.text ?? "it is busy."}` +
        " “Print the page” works without it.",
    );
    return;
  }
  if ("refused" in outcome.ok) {
    tell(card, `There is no answer to print yet. ${outcome.ok.refused}`);
    return;
  }
  tell(card, outcome.ok.said ?? "");
  printAlone(outcome.ok.html, outcome.ok.kind);
}

/** @param {BenchCard} card */
function startOver(card) {
  const undo = card.startOver();
  const place = one(card, ".do", HTMLElement);
  one(card, ".do .undo", HTMLElement)?.remove();
  const back = button("Put my values back", "undo");
  back.addEventListener("click", () => {
    undo();
    const pressed = one(card, '[data-do="start-over"]', HTMLElement);
    back.remove();
    pressed?.focus();
    tell(card, "Your values are back.");
  });
  one(card, '[data-do="start-over"]', HTMLElement)?.after(back);
  if (place) tell(card, "Back to the example.");
}

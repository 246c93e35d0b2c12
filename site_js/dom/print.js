// One sheet alone on paper: the page steps aside until it is printed.

import { put } from "./put.js";

/**
 * @param {string} html  made by fibercalc.site
 * @param {"alone" | "booth" | "paper" | "labels"} kind
 */
export function printAlone(html, kind) {
  document.querySelector(`.sheet-${kind}`)?.remove();
  const sheet = document.createElement("section");
  sheet.className = `sheet-${kind}`;
  put(sheet, html);
  document.body.append(sheet);
  document.documentElement.classList.add(`print-${kind}`);
  const clean = () => {
    sheet.remove();
    document.documentElement.classList.remove(`print-${kind}`);
  };
  addEventListener("afterprint", clean, { once: true });
  print();
}

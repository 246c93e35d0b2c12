// "Save to the workbook" on a card: where its values can go, a name, and what became of it. Which
// records they are is Python's matter.

import { button, one, say } from "../dom/dom.js";
import { siteRoot } from "../dom/places.js";
import { python } from "../python/python.js";
import { workbook } from "../workbook/records.js";
import { letters, today } from "../workbook/revisions.js";
import { tell } from "./tell.js";

/**
 * @typedef {import("./card.js").BenchCard} BenchCard
 * @typedef {import("../python/protocol.js").KeepPlace} KeepPlace
 */

/** @param {BenchCard} card */
export async function keepCard(card) {
  const open = one(card, "form.keep", HTMLFormElement);
  if (open) {
    open.remove();
    return;
  }
  await workbook.ready();
  const outcome = await python.ask({ do: "workbook-places", ...card.asked, records: workbook.all });
  if (outcome === null || !card.alive) return;
  if ("problem" in outcome) tell(card, `Saving needs the calculator: ${outcome.problem.text}`);
  else panel(card, outcome.ok.places);
}

/**
 * @param {BenchCard} card
 * @param {KeepPlace[]} places
 */
function panel(card, places) {
  const form = document.createElement("form");
  form.className = "keep";
  form.noValidate = true;
  const list = placeList(places);
  const name = nameInput();
  const named = field("Name", name);
  const why = document.createElement("p");
  why.className = "why";
  why.setAttribute("role", "alert");
  why.hidden = true;
  const leave = button("Not now");
  const line = document.createElement("p");
  line.className = "do";
  line.append(Object.assign(button("Save", "first"), { type: "submit" }), leave);
  form.append(field("Save as", list), named, why, line);
  const fit = () => {
    // a record that is there keeps its name
    named.hidden = (places[list.selectedIndex]?.name ?? "") !== "";
  };
  fit();
  list.addEventListener("change", fit);
  leave.addEventListener("click", () => {
    form.remove();
    one(card, '[data-do="keep"]', HTMLElement)?.focus();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const { place = "" } = places[list.selectedIndex] ?? {};
    void keep(card, form, place, named.hidden ? "" : name.value, why);
  });
  one(card, ".do", HTMLElement)?.before(form);
  list.focus();
}

/** @param {KeepPlace[]} places */
function placeList(places) {
  const list = document.createElement("select");
  const options = places.map(({ place, words }) =>
    Object.assign(document.createElement("option"), { value: place, textContent: words }),
  );
  list.append(...options);
  return list;
}

function nameInput() {
  const about = { type: "text", autocomplete: /** @type {const} */ ("off"), maxLength: 80 };
  const name = Object.assign(document.createElement("input"), about);
  name.setAttribute("autocapitalize", "off");
  return name;
}

/**
 * @param {string} words
 * @param {HTMLElement} control
 */
function field(words, control) {
  const place = document.createElement("div");
  place.className = "field";
  const label = document.createElement("label");
  label.textContent = words;
  const entry = document.createElement("div");
  entry.className = "entry";
  control.id = `keep-${words.replace(" ", "-")}`;
  label.htmlFor = control.id;
  entry.append(control);
  place.append(label, entry);
  return place;
}

/**
 * @param {BenchCard} card
 * @param {HTMLFormElement} form
 * @param {string} place
 * @param {string} name
 * @param {HTMLElement} why
 */
async function keep(card, form, place, name, why) {
  // browsers want a press for this
  if (workbook.all.length === 0) void navigator.storage?.persist?.();
  const outcome = await python.ask({
    do: "workbook-keep",
    ...card.asked,
    place,
    name,
    fresh: letters(12),
    today: today(),
    records: workbook.all,
  });
  if (outcome === null) return;
  if ("problem" in outcome) {
    say(why, outcome.problem.text);
    return;
  }
  if ("refused" in outcome.ok) {
    say(why, outcome.ok.refused);
    return;
  }
  const { record } = outcome.ok;
  const before = workbook.find(record.id);
  const problem = await workbook.change([{ before, after: record }]);
  if (problem) {
    say(why, problem);
    return;
  }
  form.remove();
  saved(card, record.id);
}

/**
 * It is kept: where it can be seen, and the way back.
 * @param {BenchCard} card
 * @param {string} id
 */
function saved(card, id) {
  const see = Object.assign(document.createElement("a"), {
    href: `${siteRoot().href}workbook/#${id}`,
    textContent: "See it in the workbook",
  });
  const undo = button("Undo", "undo");
  undo.addEventListener("click", async () => {
    const notDone = await workbook.undo();
    tell(card, notDone || "As it was before.");
  });
  tell(card, "Saved to the workbook.", [see, undo]);
  one(card, '[data-do="keep"]', HTMLElement)?.focus();
}

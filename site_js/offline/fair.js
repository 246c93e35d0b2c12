// "Fair check", before a day with no signal: looks for every part in the caches, runs one
// calculation, says yes or no.

import { python } from "../python/python.js";
import { offline } from "./offline.js";

/**
 * The button may name a card to work (data-card); its example is calculated.
 * @param {HTMLElement} pressed
 */
export async function fairCheck(pressed) {
  const place = resultPlace(pressed);
  place.replaceChildren(line("Checking…"));
  const seen = "caches" in window ? await offline.inspect() : null;
  const worked = await calculation(pressed.dataset.card ?? "");
  const lines = (seen?.parts ?? []).map(
    ({ part, found, of }) => `${part}: ${found} of ${of} found`,
  );
  if (!seen) lines.push("Files: the list could not be read");
  lines.push(worked.text);
  const list = document.createElement("ul");
  list.append(
    ...lines.map((text) => Object.assign(document.createElement("li"), { textContent: text })),
  );
  const yes = seen?.complete === true && worked.done;
  place.replaceChildren(
    line(
      yes
        ? `Yes: ready for no signal (version ${seen.version}, ${seen.date}).`
        : "No: not ready for no signal. Stay where there is signal, reload this page and check" +
          " again.",
    ),
    list,
    line(await roomTaken()),
  );
  await offline.check();
}

/** @param {string} card */
async function calculation(card) {
  if (python.stage.stage === "failed") python.retry();
  const outcome = card
    ? await python.ask({ do: "open", card, query: "" })
    : await python.ask({ do: "hello" });
  if (outcome === null) return { done: false, text: "Calculation: not run" };
  if ("problem" in outcome)
    return { done: false, text: `Calculation: failed (${outcome.problem.text})` };
  if ("say" in outcome.ok)
    return { done: outcome.ok.answered, text: `Calculation: “${outcome.ok.say}”` };
  return { done: true, text: `Calculation: version ${outcome.ok.version} answers` };
}

async function roomTaken() {
  if (!navigator.storage?.estimate) return "";
  const { usage = 0, quota = 0 } = await navigator.storage.estimate();
  const allowed = `this browser allows ${Math.round(quota / 1e6)} MB.`;
  return `The book takes ${(usage / 1e6).toFixed(1)} MB here; ${allowed}`;
}

/** @param {HTMLElement} pressed */
function resultPlace(pressed) {
  const known = document.querySelector("[data-fair-result]");
  if (known) return known;
  const place = document.createElement("div");
  place.setAttribute("role", "status");
  place.dataset.fairResult = "";
  (pressed.closest(".do") ?? pressed).after(place);
  return place;
}

/** @param {string} text */
function line(text) {
  return Object.assign(document.createElement("p"), { textContent: text });
}

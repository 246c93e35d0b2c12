// The button that loads the demo workbook, on a page that speaks of it.

import { say } from "../dom/dom.js";
import { python } from "../python/python.js";
import { bench } from "./bench.js";
import { workbook } from "./records.js";

/** @param {HTMLElement} pressed */
export async function loadDemo(pressed) {
  const place = pressed.closest("div")?.querySelector("[data-demo-result]") ?? null;
  say(place, "Loading…");
  await workbook.ready();
  // browsers want a press for this
  if (workbook.all.length === 0) void navigator.storage?.persist?.();
  const outcome = await python.ask({
    do: "workbook-demo",
    records: workbook.all,
    bench: bench.record,
    settings: bench.settings,
  });
  if (!outcome) return;
  if ("problem" in outcome) {
    say(place, outcome.problem.text);
    return;
  }
  if ("refused" in outcome.ok) {
    say(place, outcome.ok.refused);
    return;
  }
  const taken = [...outcome.ok.new, ...outcome.ok.newer];
  const why =
    taken.length > 0
      ? await workbook.change(
          taken.map((after) => ({ before: workbook.find(after.id), after, asItIs: true })),
        )
      : "";
  say(
    place,
    why ||
      (taken.length > 0
        ? `${taken.length} records are in your workbook.`
        : "The demo is in your workbook already."),
  );
}

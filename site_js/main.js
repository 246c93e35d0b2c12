// Wakes the page: elements first, then what the whole site shares.

import { BenchCard } from "./card/card.js";
import { startedAt } from "./dom/dom.js";
import { sparesData, whenIdle } from "./dom/idle.js";
import { siteRoot } from "./dom/places.js";
import { watchPresses } from "./dom/press.js";
import { BenchLink } from "./helper/linker.js";
import { fairCheck } from "./offline/fair.js";
import { offline } from "./offline/offline.js";
import { python } from "./python/python.js";
import { BenchTimers, watchTimers } from "./timers/kettle.js";
import { loadDemo } from "./workbook/demo.js";
import { BenchMine } from "./workbook/mine.js";
import { BenchWorkbook } from "./workbook/workbook.js";

siteRoot();
watchPresses();
customElements.define("bench-card", BenchCard);
customElements.define("bench-mine", BenchMine);
customElements.define("bench-link", BenchLink);
customElements.define("bench-timers", BenchTimers);
customElements.define("bench-workbook", BenchWorkbook);
watchTimers();

addEventListener("pagehide", () => python.rest());
addEventListener("pageshow", (event) => {
  if (!event.persisted) return;
  python.resume();
  if (document.querySelector("bench-card") && !sparesData())
    void whenIdle().then(() => python.start());
});
document.addEventListener("click", (event) => {
  const pressed = startedAt(event, '[data-do="fair-check"]');
  if (pressed) void fairCheck(pressed);
  const demo = startedAt(event, '[data-do="load-demo"]');
  if (demo) void loadDemo(demo);
});

// Paper shows the address that brings these very values back.
addEventListener("beforeprint", () => {
  const address = document.querySelector('.print-line [data-slot="address"]');
  if (address) address.textContent = location.href;
});

// The theme's search listens for keys only; words pasted or dictated come without one.
document.addEventListener("input", (event) => {
  if (event.target instanceof HTMLElement && event.target.matches(".find__query"))
    event.target.dispatchEvent(new KeyboardEvent("keyup", { bubbles: true }));
});

void offline.start();

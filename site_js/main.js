// Wakes the page: elements first, then what the whole site shares.

import { BenchCard } from "./card.js";
import { loadDemo } from "./demo.js";
import { startedAt } from "./dom.js";
import { fairCheck } from "./fair.js";
import { sparesData, whenIdle } from "./idle.js";
import { BenchLink } from "./linker.js";
import { BenchTimers, watchTimers } from "./kettle.js";
import { BenchMine } from "./mine.js";
import { offline } from "./offline.js";
import { siteRoot } from "./places.js";
import { watchPresses } from "./press.js";
import { python } from "./python.js";
import { BenchWorkbook } from "./workbook.js";

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
  if (document.querySelector("bench-card") && !sparesData()) void whenIdle().then(() => python.start());
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
  if (event.target instanceof HTMLElement && event.target.matches(".find__query")) event.target.dispatchEvent(new KeyboardEvent("keyup", { bubbles: true }));
});

void offline.start();

// <bench-timers>: the timers at the foot of the window, on every page while there are any. They are
// kept on this device, so that neither another page nor a reload loses one; another tab shows the
// same.

import { button, say, startedAt } from "../dom/dom.js";
import { LivingElement } from "../dom/life.js";
import { Alarm } from "./alarm.js";
import { Awake } from "./awake.js";
import {
  changed,
  extended,
  isOver,
  isRunning,
  readTimers,
  tidied,
  untilNextLook,
  withTimer,
  written,
} from "./clockwork.js";

/** @typedef {import("./clockwork.js").Timer} Timer */

const KEPT = "bench-book timers";
const MORE = 5; // min

const awake = new Awake();
const alarm = new Alarm();

/** @type {Timer[]} */
let timers = [];
let keeps = true;

/** Timers that were running come back; from now on a press on an offer starts one. */
export function watchTimers() {
  timers = load();
  document.addEventListener("click", (event) => {
    const offer = startedAt(event, '[data-do="start-timer"]');
    if (!offer) return;
    const { label = "", minutes = "" } = offer.dataset;
    const next = withTimer(timers, { label, minutes: Number(minutes) }, Date.now());
    alarm.makeReady();
    change(
      next,
      next.length > timers.length
        ? `Timer started: ${label}.`
        : "No more timers can be started: stop one first.",
    );
  });
  addEventListener(
    "pointerdown",
    () => {
      if (timers.length > 0) alarm.makeReady();
    },
    { passive: true },
  );
  addEventListener("storage", (event) => {
    if (event.key !== KEPT) return;
    timers = load();
    show();
  });
  for (const type of ["visibilitychange", "pageshow"]) addEventListener(type, () => show());
  awake.addEventListener("change", () => show());
  show();
}

function load() {
  try {
    return readTimers(localStorage.getItem(KEPT), Date.now());
  } catch {
    keeps = false; // a private window, or storage denied: they live as long as this page
    return timers;
  }
}

/** @param {Timer[]} next */
function keep(next) {
  timers = next;
  try {
    if (timers.length > 0) localStorage.setItem(KEPT, JSON.stringify(timers));
    else localStorage.removeItem(KEPT);
  } catch {
    keeps = false;
  }
}

/**
 * @param {Timer[]} next
 * @param {string} [spoken]
 */
function change(next, spoken = "") {
  keep(next);
  show();
  if (spoken) place()?.speak(spoken);
}

/** @returns {BenchTimers | null} */
function place() {
  const found = document.querySelector("bench-timers");
  return found instanceof BenchTimers ? found : null;
}

/** Brings everything in line with the time: what is written, the screen, the sound. */
function show() {
  const now = Date.now();
  const tidy = tidied(timers, now);
  if (tidy.length !== timers.length) keep(tidy);
  const ended = timers.filter((timer) => isOver(timer, now) && !timer.told);
  if (ended.length > 0) {
    keep(timers.map((timer) => (ended.includes(timer) ? { ...timer, told: true } : timer)));
    alarm.start();
  } else if (!timers.some((timer) => isOver(timer, now))) alarm.stop();
  awake.want(timers.some((timer) => isRunning(timer, now)));
  if (timers.length === 0) {
    place()?.remove();
    return;
  }
  if (!place()) document.body.append(new BenchTimers());
  place()?.show(now);
  if (ended.length > 0) place()?.speak(ended.map(({ label }) => `${label} is over.`).join(" "));
}

/** @param {number} now */
function statusWords(now) {
  const words = [];
  if (timers.some((timer) => isRunning(timer, now))) {
    if (awake.state === "on")
      words.push(
        "The screen stays on. Lock it or leave the book, and the time goes on, but nothing sounds.",
      );
    if (awake.state === "refused")
      words.push(
        "This browser does not keep the screen on. With the screen off the time goes on, but" +
          " nothing sounds.",
      );
  }
  if (!alarm.ready) words.push("Touch the page once, or it cannot sound.");
  if (!keeps) words.push("Nothing can be kept here: a reload loses the timers.");
  return words.join(" ");
}

export class BenchTimers extends LivingElement {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  #next;
  #list = document.createElement("ul");
  #status = document.createElement("p");
  #speech = Object.assign(document.createElement("p"), { className: "unseen" });
  /** @type {Map<string, Row>} */
  #rows = new Map();

  /** A timer that runs is work in hand: no reload is offered over it. */
  get unsaved() {
    return timers.some((timer) => isRunning(timer, Date.now()));
  }

  /** @override */
  enter() {
    this.setAttribute("role", "region");
    this.setAttribute("aria-label", "Timers");
    this.#speech.setAttribute("role", "status");
    this.replaceChildren(this.#list, this.#status, this.#speech);
  }

  /** @override */
  leave() {
    clearTimeout(this.#next);
  }

  /** @param {number} now */
  show(now) {
    for (const timer of timers) {
      let row = this.#rows.get(timer.id);
      if (!row) {
        row = new Row(timer.id);
        this.#rows.set(timer.id, row);
        this.#list.append(row.element);
      }
      row.show(timer, now);
    }
    for (const [id, row] of this.#rows) {
      if (timers.some((timer) => timer.id === id)) continue;
      row.element.remove();
      this.#rows.delete(id);
    }
    say(this.#status, statusWords(now));
    clearTimeout(this.#next);
    this.#next = setTimeout(show, untilNextLook(timers, now));
  }

  /** @param {string} text */
  speak(text) {
    this.#speech.textContent = text;
  }
}

/** One timer's line: what is waited for, how long, more time, and the end of it. */
class Row {
  element = document.createElement("li");
  #label = document.createElement("span");
  #time = Object.assign(document.createElement("b"), { role: "timer" });
  #more = button(`${MORE} min more`);
  #end = button("Stop");

  /** @param {string} id */
  constructor(id) {
    const words = document.createElement("div");
    words.append(this.#label, this.#time);
    this.element.append(words, this.#more, this.#end);
    this.#more.addEventListener("click", () =>
      change(changed(timers, id, (timer) => extended(timer, MORE, Date.now()))),
    );
    this.#end.addEventListener("click", () => {
      const now = Date.now();
      const focused = document.activeElement === this.#end;
      change(
        changed(timers, id, (timer) => {
          if (timer.stopped !== null) return { ...timer, stopped: null };
          return isOver(timer, now) ? null : { ...timer, stopped: now };
        }),
      );
      if (focused && !this.element.isConnected) nextFocus();
    });
  }

  /**
   * @param {Timer} timer
   * @param {number} now
   */
  show(timer, now) {
    const over = isOver(timer, now);
    const state = timer.stopped !== null ? "stopped" : over ? "over" : "running";
    this.element.dataset.state = state;
    const words = { stopped: "stopped at", over: "over for", running: "" }[state];
    say(this.#label, words ? `${timer.label}: ${words}` : timer.label);
    say(this.#time, written(timer, now));
    say(this.#end, { stopped: "Put back", over: "Done", running: "Stop" }[state]);
    this.#end.setAttribute("aria-label", `${this.#end.textContent}: ${timer.label}`);
    this.#more.setAttribute("aria-label", `${this.#more.textContent}: ${timer.label}`);
    this.#end.classList.toggle("first", state !== "running");
    this.#more.hidden = state === "stopped";
  }
}

/** A line has gone under the finger or the key: the next one, or the page, has the focus. */
function nextFocus() {
  const next = document.querySelector("bench-timers button");
  if (next instanceof HTMLElement) next.focus();
}

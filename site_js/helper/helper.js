// The customers' yardage helper. The answer comes from the table at once; Python joins in where
// megabytes are no rudeness, or when asked for. Texts of a link reach the page as text only.

import { copied } from "../dom/copy.js";
import { one, say, startedAt } from "../dom/dom.js";
import { whenIdle } from "../dom/idle.js";
import { siteRoot } from "../dom/places.js";
import { offline } from "../offline/offline.js";
import { python } from "../python/python.js";
import { stateWords } from "../python/words.js";
import { embedded, tellHeight } from "./embed.js";
import { answered, fill, inRange, readLink, within, written } from "./yardage.js";

/**
 * @typedef {import("../python/protocol.js").YardageTable} Table
 * @typedef {import("../python/protocol.js").YardageSaid} Said
 */

siteRoot();
const main = /** @type {HTMLElement} */ (document.querySelector("main"));
const form = /** @type {HTMLFormElement} */ (document.querySelector("form"));

/** @param {string} name */
const slot = (name) => one(document, `[data-slot="${name}"]`, HTMLElement);
/** @param {string} name */
const press = (name) => one(document, `[data-do="${name}"]`, HTMLButtonElement);
/** @param {string} name */
const value = (name) => String(new FormData(form).get(name) ?? "");

class Helper {
  #table;
  /** @type {import("../python/protocol.js").BaseLink} */
  #link;
  /** @type {Said | null} */
  #said = null;

  /** @param {Table} table */
  constructor(table) {
    this.#table = table;
    this.#link = readLink(table.rules, location.search, location.hash);
  }

  start() {
    this.#showBase();
    form.addEventListener("input", (event) => {
      if (event.target instanceof HTMLSelectElement && event.target.name === "project")
        this.#offerSizes();
      this.#answer();
    });
    form.addEventListener("submit", (event) => event.preventDefault());
    main.addEventListener("click", (event) => void this.#pressed(startedAt(event, "[data-do]")));
    addEventListener("hashchange", () => {
      this.#link = readLink(this.#table.rules, location.search, location.hash);
      this.#showBase();
      this.#answer();
    });
    addEventListener("beforeprint", () => say(slot("address"), `${today()} · ${shared()}`));
    python.addEventListener("stage", () => this.#tellStage());
    this.#offerSizes();
    this.#answer();
    this.#tellStage();
    delete main.dataset.waits;
    const keep = press("keep");
    if (keep) keep.hidden = embedded || !("serviceWorker" in navigator) || kept();
    if (mayStart()) void whenIdle().then(() => python.start());
  }

  /** The base of the link; without one, the fields for a skein. */
  #showBase() {
    const { kind, grams, meters, weight_class: weightClass, name, lot, price } = this.#link;
    const { words, classes, rules } = this.#table;
    const linked = kind === "base";
    document.body.classList.toggle("linked", linked);
    say(one(main, ".broken", HTMLElement), kind === "broken" ? (words.broken ?? "") : "");
    for (const input of kind === "broken" ? form.querySelectorAll("[data-skein] input") : [])
      Reflect.set(input, "value", "");
    const parts = !linked
      ? []
      : [
          fill(words.skein, {
            grams: String(grams),
            meters: String(meters),
            yards: written(this.#table, meters).yards,
          }),
          rules.classes.includes(weightClass)
            ? fill(words.class, { name: classes[weightClass] })
            : "",
          lot && fill(words.in_lot, { lot }),
          price && fill(words.price, { price }),
        ];
    const base = slot("base");
    const bold = document.createElement("b");
    bold.append(isolated(name));
    base?.replaceChildren(
      ...(name && linked ? [bold, " · "] : []),
      isolated(parts.filter(Boolean).join(" · ")),
    );
    if (base) base.hidden = !linked;
    say(slot("lot"), linked && lot ? fill(words.this_lot, { lot }) : (words.lot ?? ""));
  }

  #offerSizes() {
    const project = this.#table.projects.find(({ key }) => key === value("project"));
    const select = one(form, 'select[name="size"]', HTMLSelectElement);
    if (!project || !select) return;
    const chosen = project.sizes.some(({ key }) => key === select.value)
      ? select.value
      : project.first;
    select.replaceChildren(
      ...project.sizes.map(
        ({ key, label, measure }) => new Option(`${label}: ${measure}`, key, false, key === chosen),
      ),
    );
    say(slot("assumes"), project.assumes);
    say(slot("sizes-from"), project.sizes_from);
  }

  /** Grams and meters as typed or linked, or the lines that say what is wrong. */
  #skein() {
    if (this.#link.kind === "base") return this.#link;
    const { rules, units, words } = this.#table;
    const read = (/** @type {"grams" | "meters"} */ name) => {
      const text = value(name).trim().replace(",", ".");
      const number = inRange(text, rules.number, [0, 1e9]);
      const found = number === null ? null : number * (units[name][value(`${name}.unit`)] ?? NaN);
      return found !== null && within(found, rules[name]) ? found : null;
    };
    const [grams, meters] = [read("grams"), read("meters")];
    const apart = grams !== null && meters !== null && !within((100 * meters) / grams, rules.grist);
    wrong("grams", grams === null && value("grams") ? words.grams : "");
    wrong("meters", meters === null && value("meters") ? words.meters : apart ? words.grist : "");
    return grams === null || meters === null || apart ? null : { grams, meters };
  }

  #answer() {
    const skein = this.#skein();
    const empty = this.#said === null && !skein;
    say(one(main, ".kept", HTMLElement), skein || empty ? "" : (this.#table.words.kept ?? ""));
    if (empty) say(slot("say"), this.#table.words.empty ?? "");
    if (!skein) return;
    const asked = {
      grams: skein.grams,
      meters: skein.meters,
      project: value("project"),
      size: value("size"),
      sure: value("sure"),
    };
    this.#show(answered(this.#table, asked), "table");
    if (python.stage.stage === "ready") void this.#exact(asked);
  }

  /** @param {import("../python/protocol.js").Skein} asked */
  async #exact(asked) {
    const outcome = await python.ask({ do: "yardage", ...asked }, { replaces: "yardage" });
    if (outcome && "ok" in outcome) this.#show(outcome.ok, "live");
  }

  /**
   * @param {Said | null} said
   * @param {"table" | "live"} from
   */
  #show(said, from) {
    if (!said) return;
    this.#said = said;
    say(slot("say"), said.say);
    say(slot("fewer"), said.fewer);
    say(slot("need"), said.need);
    say(slot("basis"), this.#table.words[from] ?? "");
  }

  /** @param {HTMLElement | null} pressed */
  async #pressed(pressed) {
    const told = one(main, ".told", HTMLElement);
    switch (pressed?.dataset.do) {
      case "copy":
        say(
          told,
          ((await copied(this.#summary()))
            ? this.#table.words.copied
            : this.#table.words.not_copied) ?? "",
        );
        break;
      case "print":
        print();
        break;
      case "exact":
        if (python.stage.stage === "failed") python.retry();
        else python.start();
        break;
      case "keep":
        pressed.hidden = true;
        one(main, "[data-offline-state]", HTMLElement)?.removeAttribute("hidden");
        await offline.keep();
        break;
    }
  }

  /** The answer as text that can be sent to the maker. */
  #summary() {
    const chosen = (/** @type {string} */ name) =>
      one(form, `select[name="${name}"]`, HTMLSelectElement)?.selectedOptions[0]?.textContent ?? "";
    const asked = fill(this.#table.words.asked, {
      project: chosen("project"),
      size: chosen("size"),
      sure: value("sure"),
    });
    const typed = ["grams", "meters"]
      .map((name) => `${value(name)} ${value(`${name}.unit`)}`)
      .join(", ");
    const skein = this.#link.kind === "base" ? slot("base")?.textContent : typed;
    const lines = [
      skein,
      asked,
      ...["say", "fewer", "need", "lot", "basis"].map((name) => slot(name)?.textContent),
      `${today()} ${shared()}`,
    ];
    return lines.filter(Boolean).join("\n");
  }

  #tellStage() {
    const { stage } = python;
    const { text } = stateWords(stage, { offline: false, waiting: false, worked: true });
    say(
      one(main, ".state", HTMLElement),
      stage.stage === "loading" || stage.stage === "failed" ? text : "",
    );
    const exact = press("exact");
    if (exact)
      exact.hidden =
        stage.stage === "loading" ||
        stage.stage === "ready" ||
        (stage.stage === "asleep" && mayStart());
    if (stage.stage === "ready") this.#answer();
  }
}

/**
 * @param {string} name
 * @param {string | undefined} text
 */
function wrong(name, text) {
  const field = one(form, `[data-name="${name}"]`, HTMLElement);
  field?.classList.toggle("bad", Boolean(text));
  field?.querySelector("input")?.setAttribute("aria-invalid", String(Boolean(text)));
  if (field) say(one(field, ".why", HTMLElement), text ?? "");
}

/**
 * A text from outside, kept from turning the line around it.
 * @param {string} text
 */
function isolated(text) {
  const made = document.createElement("bdi");
  made.textContent = text;
  return made;
}

/** Is the whole book on this device already? Then Python costs the line nothing. */
function kept() {
  return !embedded && "serviceWorker" in navigator && navigator.serviceWorker.controller !== null;
}

/**
 * Six megabytes by a code at a fair are rude: only where the line is known to be good, or need not
 * be used.
 */
function mayStart() {
  const line =
    /** @type {{ effectiveType?: string, type?: string, saveData?: boolean } | undefined} */ (
      Reflect.get(navigator, "connection")
    );
  if (embedded || line?.saveData) return false;
  return kept() || (line?.effectiveType === "4g" && line.type !== "cellular");
}

/** The address to send on: without the scheme of this one screen. */
function shared() {
  const address = new URL(location.href);
  address.searchParams.delete("theme");
  return address.href;
}

function today() {
  return new Date().toISOString().slice(0, 10);
}

async function start() {
  tellHeight();
  try {
    const response = await fetch(new URL("./helper.json", import.meta.url));
    new Helper(await response.json()).start();
  } catch (error) {
    if (!(error instanceof TypeError || error instanceof SyntaxError)) throw error;
    say(slot("say"), main.dataset.late ?? "");
  }
}

addEventListener("pagehide", () => python.rest());
addEventListener("pageshow", (event) => {
  if (event.persisted) python.resume();
});
void start();

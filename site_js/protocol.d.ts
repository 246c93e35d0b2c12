// What crosses between the page and Python, as types only: JSON text in, JSON text out.

export interface Settings {
  style: "point" | "comma";
  system: "both" | "metric" | "us";
  money: string;
}

export type Texts = Record<string, string>;

export interface FieldSaid {
  read: string;
  why: string;
}

/** The answer to "work" and, with the optional parts, to "open". */
export interface Answer {
  answered: boolean;
  fields: Record<string, FieldSaid>;
  shown: string[];
  slots: Texts;
  query: string | null;
  say: string;
  /** what is wrong with no single field */
  refused: string;
  values?: Texts;
  exact?: Texts;
  rows?: Record<string, number>;
  link_notes?: string[];
}

export interface Offer {
  label: string;
  values: Texts;
}

/** A saved record. Python alone checks and migrates it; the page looks only at the settings among its values. */
export interface BenchRecord {
  format: string;
  schema: number;
  values: Texts;
  rows: Record<string, number>;
}

export interface BenchChecked {
  answered: boolean;
  record: BenchRecord | null;
  fields: Record<string, FieldSaid>;
  shown: string[];
  saved_text: string;
}

export interface BenchRead {
  record: BenchRecord;
  notes: string[];
  values: Texts;
  exact: Texts;
  rows: Record<string, number>;
}

/** A link for one base, as read; see fibercalc/workbook/base_link.py. */
export interface BaseLink {
  kind: "none" | "broken" | "base";
  grams: number;
  meters: number;
  weight_class: string;
  name: string;
  lot: string;
  price: string;
}

/** helper.json beside the scripts: everything that the yardage helper says without Python; made by fibercalc/site/helper.py. */
export interface YardageTable {
  rules: {
    version: string; longest: number; number: string; hidden: string; space: string; classes: string[]; texts: Record<string, number>;
    grams: [number, number]; meters: [number, number]; grist: [number, number];
  };
  words: Texts;
  odds: [floor: number, words: string][];
  most: number;
  counts: string[];
  nexts: string[];
  lengths: [upper: number, meters: string, yards: string][];
  classes: Texts;
  sure: { key: string; label: string }[];
  first_sure: string;
  units: Record<"grams" | "meters", Record<string, number>>;
  grists: number[];
  ratios: number[];
  curves: number[][];
  projects: { key: string; label: string; assumes: string; first: string; sizes: { key: string; label: string; measure: string; need: number[]; curve: number }[] }[];
}

export interface YardageSaid {
  say: string;
  fewer: string;
  need: string;
  /** skeins; 0 when there are too many */
  count: number;
}

/** One base of My bench at the counter; costs[n] is the price of n skeins as written, all "" where there is none. */
export interface CounterBase {
  number: number;
  label: string;
  put_up: string;
  lot: string;
  grams: number;
  meters: number;
  costs: string[];
}

export interface LinkMade {
  answered: boolean;
  fields: Record<string, FieldSaid>;
  shown: string[];
  refused: string;
  /** the whole link, and without what travels in its fragment; "" while a field is bad */
  link: string;
  short: string;
  about: string;
  svg: string;
  png: string;
  snippet: string;
  listener: string;
  booth: string;
}

export interface Replies {
  yardage: YardageSaid;
  counter: { bases: CounterBase[]; notes: string[] };
  "counter-code": { svg: string; link: string };
  "base-link": LinkMade;
  stand: { html: string; refused: string };
  work: Answer;
  open: Answer;
  convert: { text: string; exact: string };
  /** kind is how it is printed; said is for the page, not for the paper */
  sheet: { html: string; kind: "alone" | "paper" | "labels"; refused?: string; said?: string };
  "bench-read": BenchRead;
  "bench-check": BenchChecked;
  "bench-offers": { offers: Offer[] };
  check: { passed: number; failed: string[] };
  hello: { version: string; python: string };
}

export type Question<D extends keyof Replies = keyof Replies> = { do: D; [part: string]: unknown };

/** "fault" and "needs" come from Python or its worker; "unavailable" means that there is no Python to ask. */
export interface Problem {
  kind: "fault" | "needs" | "unavailable";
  text: string;
}

export type Outcome<T> = { ok: T } | { problem: Problem };

export type Stage =
  | { stage: "asleep" }
  | { stage: "loading"; loaded: number; total: number }
  | { stage: "ready" }
  | { stage: "failed"; text: string };

/** assets/offline-manifest.json */
export interface OfflineManifest {
  version: string;
  date: string;
  bytes: number;
  files: { url: string; revision: string | null; bytes?: number }[];
}

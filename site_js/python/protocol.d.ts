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
  /** names of the values that are hers */
  own: string[];
  /** what the form shows in place of what the example had only lent */
  taken_back: { values: Texts; rows: Record<string, number> };
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
  /** what kind of record it is from; My bench's have none */
  kind?: string;
  rows?: Record<string, number>;
  /** what of it this card cannot take, in a line; values are empty where that is all of it */
  why?: string;
  /** the names of what it says itself; all of it where none are named */
  own?: string[];
}

/**
 * One saved record as a document. Python alone checks and migrates it; the browser looks at its id
 * and gives it its revision.
 */
export interface WorkbookRecord {
  id: string;
  kind: string;
  schema: number;
  rev: string;
  past: string[];
  changed: string;
  values: Texts;
  rows: Record<string, number>;
}

export interface WorkbookView {
  html: string;
  count: number;
  unread: number;
  /** what was removed lately and can be brought back */
  removed: string;
  reminder: string;
  /** ids of the demo's records */
  demo: string[];
  /** how many bases of My bench are not here yet */
  bench: number;
}

export interface WorkbookForm {
  html: string;
  kind: string;
  title: string;
  named_by: number;
  /** the field that names the record */
  name: string;
  values: Texts;
  exact: Texts;
  rows: Record<string, number>;
  changed: string;
}

export interface WorkbookChecked {
  fields: Record<string, FieldSaid>;
  shown: string[];
  refused: string;
  record: WorkbookRecord | null;
}

/** What a file would change, told before anything does. */
export interface WorkbookFile {
  refused?: string;
  words: string;
  clashes: string[];
  new: WorkbookRecord[];
  newer: WorkbookRecord[];
  settled: WorkbookRecord[];
  bench: BenchRecord | null;
  bench_clash: boolean;
}

export interface MadeFile {
  text: string;
  name: string;
  /** why an export, read back, is no whole copy */
  unproven?: string;
}

export interface KeepPlace {
  place: string;
  words: string;
  name: string;
}

/**
 * A saved record. Python alone checks and migrates it; the page looks only at the settings among
 * its values.
 */
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

/**
 * helper.json beside the scripts: everything that the yardage helper says without Python; made by
 * fibercalc/site/helper.py.
 */
export interface YardageTable {
  rules: {
    version: string;
    longest: number;
    number: string;
    hidden: string;
    space: string;
    classes: string[];
    texts: Record<string, number>;
    grams: [number, number];
    meters: [number, number];
    grist: [number, number];
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
  projects: {
    key: string;
    label: string;
    assumes: string;
    sizes_from: string;
    first: string;
    sizes: { key: string; label: string; measure: string; need: number[]; curve: number }[];
  }[];
}

export interface YardageSaid {
  say: string;
  fewer: string;
  need: string;
  /** skeins; 0 when there are too many */
  count: number;
}

/**
 * One base of My bench or the workbook at the counter; costs[n] is the price of n skeins as
 * written, all "" where there is none.
 */
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
  "workbook-view": WorkbookView;
  "workbook-form": WorkbookForm;
  "workbook-check": WorkbookChecked;
  "workbook-file": WorkbookFile;
  "workbook-demo": WorkbookFile;
  "workbook-bench": WorkbookFile;
  "workbook-export": MadeFile;
  "workbook-table": MadeFile;
  "workbook-trace": { html: string; sheet: string; found: number };
  "workbook-places": { places: KeepPlace[] };
  "workbook-keep": { record?: WorkbookRecord; refused?: string };
  check: { passed: number; failed: string[] };
  hello: { version: string; python: string };
}

export type Question<D extends keyof Replies = keyof Replies> = { do: D; [part: string]: unknown };

/**
 * "fault" and "needs" come from Python or its worker; "unavailable" means that there is no Python
 * to ask.
 */
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

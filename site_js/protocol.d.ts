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

export interface Replies {
  work: Answer;
  open: Answer;
  convert: { text: string; exact: string };
  sheet: { html: string; refused?: string };
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

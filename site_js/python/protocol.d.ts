// What crosses between the page and Python, as types only: JSON text in, JSON text out.
// Written from fibercalc/site/protocol/ by the build; what is changed here is lost.

export type Texts = Record<string, string>;

/** How numbers are written and read. */
export interface Settings {
  style: "point" | "comma";
  system: "both" | "metric" | "us";
  money: string;
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

/** One of the cards before on the way here. */
export interface Step {
  card: string;
  query: string;
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

/** About one field: how it was read, or what is wrong. */
export interface FieldSaid {
  read: string;
  why: string;
}

/** What the form shows in place of what the example had only lent. */
export interface TakenBack {
  values: Texts;
  rows: Record<string, number>;
}

/** The answer to "work" and, with the parts that may be missing, to "open". */
export interface Answer {
  answered: boolean;
  fields: Record<string, FieldSaid>;
  shown: string[];
  slots: Texts;
  query: string | null;
  /** names of the values that are hers */
  own: string[];
  taken_back: TakenBack;
  say: string;
  /** what is wrong with no single field */
  refused: string;
  values?: Texts;
  exact?: Texts;
  rows?: Record<string, number>;
  link_notes?: string[];
}

/** A number in another unit. */
export interface Converted {
  text: string;
  exact: string;
}

export interface NoSheet {
  html: "";
  refused: string;
}

/** A sheet to be printed alone. */
export interface Sheet {
  html: string;
  /** how it is printed */
  kind: "alone" | "paper" | "labels";
  /** for the page, not for the paper */
  said?: string;
}

/** Values that a card can take. */
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

export interface Offers {
  offers: Offer[];
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
  settings: Settings;
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

export interface NotRead {
  refused: string;
}

/** What a file would change, told before anything does. */
export interface WorkbookFile {
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

export interface Traced {
  html: string;
  sheet: string;
  found: number;
}

export interface KeepPlace {
  place: string;
  words: string;
  name: string;
}

export interface KeepPlaces {
  places: KeepPlace[];
}

export interface NotSaved {
  refused: string;
}

export interface Saved {
  record: WorkbookRecord;
}

export interface Checks {
  passed: number;
  failed: string[];
}

export interface Hello {
  version: string;
  python: string;
}

/** A field is bad, or no link can be made of what they say. */
export interface LinkNotMade {
  answered: false;
  fields: Record<string, FieldSaid>;
  shown: string[];
  refused: string;
}

/** A base's link, and all that carries it. */
export interface LinkMade {
  answered: true;
  fields: Record<string, FieldSaid>;
  shown: string[];
  refused: string;
  link: string;
  /** without what travels in its fragment */
  short: string;
  about: string;
  svg: string;
  png: string;
  snippet: string;
  listener: string;
  booth: string;
}

export interface Stand {
  html: string;
  refused: string;
}

/** How a link is read; RULES of fibercalc/workbook/base_link.py. */
export interface LinkRules {
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
}

export interface Sure {
  key: string;
  label: string;
}

export interface YardageSize {
  key: string;
  label: string;
  measure: string;
  need: number[];
  curve: number;
}

export interface YardageProject {
  key: string;
  label: string;
  assumes: string;
  sizes_from: string;
  first: string;
  sizes: YardageSize[];
}

/**
 * helper.json beside the scripts: everything that the yardage helper says without Python; made by
 * fibercalc/site/helper.py.
 */
export interface YardageTable {
  rules: LinkRules;
  words: Texts;
  /** floor, words */
  odds: [number, string][];
  most: number;
  counts: string[];
  nexts: string[];
  /** upper edge, meters, yards */
  lengths: [number, string, string][];
  classes: Texts;
  sure: Sure[];
  first_sure: string;
  units: Record<"grams" | "meters", Record<string, number>>;
  grists: number[];
  ratios: number[];
  curves: number[][];
  projects: YardageProject[];
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

export interface Counter {
  bases: CounterBase[];
  notes: string[];
}

export interface CounterCode {
  svg: string;
  link: string;
}

export interface Replies {
  work: Answer;
  open: Answer;
  convert: Converted;
  sheet: Sheet | NoSheet;
  check: Checks;
  hello: Hello;
  "bench-check": BenchChecked;
  "bench-read": BenchRead;
  "bench-offers": Offers;
  yardage: YardageSaid;
  "base-link": LinkMade | LinkNotMade;
  stand: Stand;
  counter: Counter;
  "counter-code": CounterCode;
  "workbook-view": WorkbookView;
  "workbook-form": WorkbookForm;
  "workbook-check": WorkbookChecked;
  "workbook-file": WorkbookFile | NotRead;
  "workbook-demo": WorkbookFile | NotRead;
  "workbook-bench": WorkbookFile;
  "workbook-export": MadeFile;
  "workbook-table": MadeFile;
  "workbook-trace": Traced;
  "workbook-places": KeepPlaces;
  "workbook-keep": Saved | NotSaved;
}

/** A form as it stands: texts by name, a unit under "<name>.unit". */
export interface Form {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
}

export interface FormRead {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  settings: Settings;
}

export interface CardForm {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  settings: Settings;
  card: string;
}

export interface ToWork {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  settings: Settings;
  card: string;
  /** the cards before on the way here, oldest first */
  trail: Step[];
}

export interface ToOpen {
  card: string;
  /** "" for the example */
  query: string;
  settings?: Settings;
  trail?: Step[];
}

export interface ToConvert {
  card: string;
  name: string;
  text: string;
  exact?: string;
  from: string;
  to: string;
  settings: Settings;
}

export interface ToPrint {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  settings: Settings;
  card: string;
  /** which of the card's own papers; null for the half-page sheet */
  paper: number | null;
  address: string;
  /** where the book stands */
  here: string;
}

export interface ToCheck {
  /** files of worked examples, by name */
  files: Texts;
}

export interface Nothing {
}

export interface ToRead {
  /** from the store or from a file: it may be anything */
  record: unknown;
  settings: Settings;
}

/** What she has written down. */
export interface Kept {
  record: BenchRecord | null;
  records: WorkbookRecord[];
  settings: Settings;
}

export interface ForCard {
  record: BenchRecord | null;
  records: WorkbookRecord[];
  settings: Settings;
  card: string;
}

export interface AtCounter {
  record: BenchRecord | null;
  records: WorkbookRecord[];
  settings: Settings;
  number?: number;
  /** where the book stands */
  here: string;
}

export interface Skein {
  grams: number;
  meters: number;
  project: string;
  size: string;
  sure: string;
}

export interface ToLink {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  settings: Settings;
  /** where the book stands */
  here: string;
}

/** What goes with a question about all records. */
export interface Workbook {
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
}

export interface ToView {
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
  /** how often it was written, and when a file was made last */
  about: unknown;
  /** what was removed lately, a batch for each press */
  removed: unknown;
  now: string;
}

export interface ToFillIn {
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
  record: string | null;
  kind: string | null;
  copy: boolean;
}

export interface ToCheckRecord {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
  kind: string;
  id: string;
}

export interface FromFile {
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
  text: string;
}

export interface ToExport {
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
  today: string;
}

export interface ToTable {
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
  today: string;
  kind: string;
}

export interface ToTrace {
  records: WorkbookRecord[];
  settings: Settings;
  bench: BenchRecord | null;
  today: string;
  asked: string;
}

export interface ToPlace {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  settings: Settings;
  card: string;
  records: WorkbookRecord[];
}

export interface ToKeep {
  values?: Texts;
  /** the full value behind a number that the page wrote itself */
  exact?: Texts;
  rows?: Record<string, number>;
  /** names of the values that are hers */
  own?: string[];
  settings: Settings;
  card: string;
  records: WorkbookRecord[];
  place: string;
  name: string;
  /** what a new record's id ends in */
  fresh: string;
  today: string;
}

export interface Questions {
  work: ToWork;
  open: ToOpen;
  convert: ToConvert;
  sheet: ToPrint;
  check: ToCheck;
  hello: Nothing;
  "bench-check": FormRead;
  "bench-read": ToRead;
  "bench-offers": ForCard;
  yardage: Skein;
  "base-link": ToLink;
  stand: ToLink;
  counter: Kept;
  "counter-code": AtCounter;
  "workbook-view": ToView;
  "workbook-form": ToFillIn;
  "workbook-check": ToCheckRecord;
  "workbook-file": FromFile;
  "workbook-demo": Workbook;
  "workbook-bench": Workbook;
  "workbook-export": ToExport;
  "workbook-table": ToTable;
  "workbook-trace": ToTrace;
  "workbook-places": ToPlace;
  "workbook-keep": ToKeep;
}

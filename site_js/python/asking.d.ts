// How the page asks Python, as types only; what is asked and answered stands in protocol.d.ts.

import { Questions, Replies } from "./protocol.js";

/** A question, by the word in "do". */
export type Question<D extends keyof Replies = keyof Replies> = { do: D } & Questions[D];

/** A question to which whoever passes it on adds what goes with all of them. */
export type PartOfQuestion<D extends keyof Replies = keyof Replies> = { do: D } & Partial<
  Questions[D]
>;

/** Asks with what goes with all of them; null when there is no answer, which is then said. */
export type AskAll = <D extends keyof Replies>(
  question: PartOfQuestion<D>,
  options?: { replaces?: string },
) => Promise<Replies[D] | null>;

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

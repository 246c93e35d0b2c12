// Runs the page's own reader for the tests in Python: questions as JSON on standard input, answers
// as JSON on standard output.
//
//   {"table": {...}, "links": [[search, hash], ...], "asked": [{...}, ...]}
//   -> {"links": [...], "asked": [...]}

import { readFileSync } from "node:fs";
import { answered, readLink } from "./yardage.js";

const { table, links, asked } = JSON.parse(readFileSync(0, "utf8"));
process.stdout.write(
  JSON.stringify({
    links: links.map(([search, hash]) => readLink(table.rules, search, hash)),
    asked: asked.map((each) => answered(table, each)),
  }),
);

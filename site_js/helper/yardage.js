// The first answer, before Python runs: reads a link by the table's rules, interpolates in the
// table's numbers and joins the table's words. The only arithmetic outside Python; a test holds
// each result against Python's own. Pure.

/**
 * @typedef {import("../python/protocol.js").YardageTable} Table
 * @typedef {import("../python/protocol.js").YardageSaid} Said
 * @typedef {import("../python/protocol.js").BaseLink} BaseLink
 */

/** @type {BaseLink} */
const NOTHING = {
  kind: "none",
  grams: 0,
  meters: 0,
  weight_class: "",
  name: "",
  lot: "",
  price: "",
};

/**
 * What a link says; whatever stands in it, an object of this form comes out.
 * @param {Table["rules"]} rules
 * @param {string} search
 * @param {string} hash
 * @returns {BaseLink}
 */
export function readLink(rules, search, hash) {
  const query = search.replace(/^\?/, "");
  const broken = { ...NOTHING, kind: /** @type {const} */ ("broken") };
  if ([...query].length > rules.longest) return broken;
  const pairs = [...new URLSearchParams(query)].filter(([key]) =>
    ["v", "g", "m", "c"].includes(key),
  );
  if (pairs.length === 0) return NOTHING;
  const given = new Map(pairs);
  const grams = inRange(given.get("g"), rules.number, rules.grams);
  const meters = inRange(given.get("m"), rules.number, rules.meters);
  const weightClass = given.get("c") ?? "";
  if (
    given.size < pairs.length ||
    given.get("v") !== rules.version ||
    grams === null ||
    meters === null
  )
    return broken;
  if (
    !within((100 * meters) / grams, rules.grist) ||
    (given.has("c") && !rules.classes.includes(weightClass))
  )
    return broken;
  const [name, lot, price] = texts(rules, hash.replace(/^#/, ""));
  return { kind: "base", grams, meters, weight_class: weightClass, name, lot, price };
}

/**
 * A written number in a range, or null.
 * @param {string | undefined} text
 * @param {string} pattern
 * @param {[number, number]} range
 */
export function inRange(text, pattern, range) {
  if (text === undefined || !new RegExp(`^(?:${pattern})$`).test(text)) return null;
  return within(Number(text), range) ? Number(text) : null;
}

/**
 * @param {number} value
 * @param {[number, number]} range
 */
export function within(value, [low, high]) {
  return value >= low && value <= high;
}

/**
 * @param {Table["rules"]} rules
 * @param {string} fragment
 * @returns {[string, string, string]}
 */
function texts(rules, fragment) {
  const hidden = new RegExp(rules.hidden, "gu");
  const space = new RegExp(rules.space, "gu");
  const given = [...fragment].length > rules.longest ? [] : [...new URLSearchParams(fragment)];
  const [name, lot, price] = ["n", "l", "p"].map((key) => {
    const cleaned = given
      .filter(([each]) => each === key)
      .map(([, text]) =>
        [
          ...text
            .replace(hidden, "")
            .replace(space, " ")
            .replace(/^ +| +$/g, ""),
        ]
          .slice(0, rules.texts[key])
          .join("")
          .replace(/ +$/, ""),
      );
    return cleaned.find((text) => text !== "") ?? "";
  });
  return [name ?? "", lot ?? "", price ?? ""];
}

/**
 * The sentences for a skein, a project and a size; null when the table does not hold them.
 * @param {Table} table
 * @param {{ grams: number, meters: number, project: string, size: string, sure: string }} asked
 * @returns {Said | null}
 */
export function answered(table, { grams, meters, project, size, sure }) {
  const row = table.projects
    .find(({ key }) => key === project)
    ?.sizes.find(({ key }) => key === size);
  const curve = row && table.curves[row.curve];
  const wanted = table.sure.find(({ key }) => key === sure);
  if (!row || !curve || !wanted) return null;
  const odds = oddsOf(table, curve, row.need, { grams, meters });
  let buy = 1;
  while (buy <= table.most && odds.enough(buy) < Number(wanted.key) / 100) buy += 1;
  return said(table, odds, buy);
}

/**
 * The odds on what is bought, from the table's numbers.
 * @param {Table} table
 * @param {number[]} curve
 * @param {number[]} needs  by the table's grists
 * @param {{ grams: number, meters: number }} skein
 */
function oddsOf(table, curve, needs, { grams, meters }) {
  const grist = Math.log((100 * meters) / grams);
  const need = Math.exp(between(table.grists.map(Math.log), needs.map(Math.log), grist));
  const ratios = table.ratios.map(Math.log);
  return {
    need,
    /** The chance that so many skeins are enough. */
    enough: (/** @type {number} */ count) =>
      1 / (1 + Math.exp(between(ratios, curve, Math.log((count * meters) / need)) / -1000)),
    /** The length that is enough with this chance. */
    lengthFor: (/** @type {number} */ chance) =>
      need * Math.exp(between(curve, ratios, 1000 * Math.log(chance / (1 - chance)))),
  };
}

/**
 * An answer in the table's words.
 * @param {Table} table
 * @param {ReturnType<typeof oddsOf>} odds
 * @param {number} buy  skeins
 * @returns {Said}
 */
function said(table, { need, enough, lengthFor }, buy) {
  const { words, counts } = table;
  const [about, low, high] = [need, lengthFor(0.025), lengthFor(0.975)].map((length) =>
    written(table, length),
  );
  const takes = fill(words.need, {
    meters: about?.meters,
    yards: about?.yards,
    low_meters: low?.meters,
    low_yards: low?.yards,
    high_meters: high?.meters,
    high_yards: high?.yards,
  });
  if (buy > table.most) {
    const none = fill(words.none, { most: counts[table.most] });
    return { say: none, fewer: "", need: takes, count: 0 };
  }
  const short = (/** @type {number} */ count) => {
    const chance = 1 - enough(count);
    return (table.odds.find(([floor]) => chance >= floor) ?? table.odds.at(-1))?.[1];
  };
  const say = fill(words.say, { count: counts[buy], odds: short(buy), next: table.nexts[buy] });
  const fewer = { fewer: counts[buy - 1], odds: short(buy - 1) };
  return { say, fewer: buy > 1 ? fill(words.fewer, fewer) : "", need: takes, count: buy };
}

/**
 * A length as the table writes it.
 * @param {Table} table
 * @param {number} length
 */
export function written(table, length) {
  const [, meters, yards] = table.lengths.find(([upper]) => length < upper) ??
    table.lengths.at(-1) ?? [0, "", ""];
  return { meters, yards };
}

/**
 * Linear between the points of a rising table; its end values outside.
 * @param {readonly number[]} xs
 * @param {readonly number[]} ys
 * @param {number} x
 */
export function between(xs, ys, x) {
  const after = xs.findIndex((each) => each >= x);
  if (after <= 0) return (after === 0 ? ys[0] : ys.at(-1)) ?? 0;
  const [x0 = 0, x1 = 0, y0 = 0, y1 = 0] = [xs[after - 1], xs[after], ys[after - 1], ys[after]];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

/**
 * A sentence with its braces filled in; each text goes in as it is.
 * @param {string | undefined} sentence
 * @param {Record<string, string | undefined>} parts
 */
export function fill(sentence, parts) {
  return (sentence ?? "").replace(/\{(\w+)\}/g, (_, name) => parts[name] ?? "");
}

// How people here write numbers, from what the browser says of its language. Pure.

/**
 * The first language of these that the browser's own library knows; undefined, its own default,
 * where it knows none: a browser may say "C", and asking for that throws.
 * @param {readonly (string | undefined)[]} languages
 */
export function knownLanguage(languages) {
  return languages.find((each) => {
    try {
      return each !== undefined && Intl.getCanonicalLocales(each).length > 0;
    } catch {
      return false;
    }
  });
}

/**
 * How they write one and a half.
 * @param {readonly (string | undefined)[]} languages
 * @returns {"point" | "comma"}
 */
export function decimalStyle(languages) {
  const parts = new Intl.NumberFormat(knownLanguage(languages)).formatToParts(1.5);
  return parts.some((part) => part.type === "decimal" && part.value === ",") ? "comma" : "point";
}

/**
 * Draws the book's sign into a folder: a weaver's draft of plain weave, threading above, treadling
 * at the right, and the cloth that they give. It is made of squares, so pictures of every size come
 * from the same grid.
 *
 *     node site_js/build/icons.mjs <folder>
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { deflateSync } from "node:zlib";

const PAPER = "#f7f4ec",
  INDIGO = "#27407a",
  MADDER = "#8c2f22";
const ENDS = 8,
  SHAFTS = 2,
  GAP = 1;
const WIDE = ENDS + GAP + SHAFTS;

/**
 * The colored squares as [column, row, color]; odd ends are on shaft 1, even ends on shaft 2, and
 * so are the picks.
 */
function squares() {
  /** @type {Array<[number, number, string]>} */
  const made = [];
  const cloth = SHAFTS + GAP;
  for (let end = 0; end < ENDS; end++) made.push([end, (end + 1) % SHAFTS, INDIGO]);
  for (let pick = 0; pick < ENDS; pick++)
    made.push([ENDS + GAP + (pick % SHAFTS), cloth + pick, INDIGO]);
  for (let tie = 0; tie < SHAFTS; tie++) made.push([ENDS + GAP + tie, SHAFTS - 1 - tie, MADDER]);
  for (let pick = 0; pick < ENDS; pick++) {
    for (let end = 0; end < ENDS; end++)
      if ((end + pick) % SHAFTS === 0) made.push([end, cloth + pick, INDIGO]);
  }
  return made;
}

function svg() {
  const edge = 2.5,
    size = WIDE + 2 * edge;
  const paths = [INDIGO, MADDER].map((color) => {
    const d = squares()
      .filter(([, , own]) => own === color)
      .map(([x, y]) => `M${x + edge} ${y + edge}h1v1h-1z`)
      .join("");
    return `<path fill="${color}" d="${d}"/>`;
  });
  const head =
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}"` +
    ' shape-rendering="crispEdges">';
  const ground = `<path fill="${PAPER}" d="M0 0h${size}v${size}H0z"/>`;
  return `${head}${ground}${paths.join("")}</svg>\n`;
}

/**
 * A PNG with a palette, straight from the grid.
 * @param {number} size  pixels
 * @param {number} unit  pixels of one square
 */
function png(size, unit) {
  const colors = [PAPER, INDIGO, MADDER];
  const start = Math.floor((size - WIDE * unit) / 2);
  const rows = Buffer.alloc(size * (size + 1)); // each row opens with a filter byte, 0: none
  for (const [column, row, color] of squares()) {
    for (let y = start + row * unit; y < start + (row + 1) * unit; y++) {
      const from = y * (size + 1) + 1 + start + column * unit;
      rows.fill(colors.indexOf(color), from, from + unit);
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 3, 0, 0, 0], 8); // 8 bits, palette
  const palette = Buffer.from(colors.map((color) => color.slice(1)).join(""), "hex");
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("PLTE", palette),
    chunk("IDAT", deflateSync(rows, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

/** @param {string} kind @param {Buffer} content */
function chunk(kind, content) {
  const typed = Buffer.concat([Buffer.from(kind, "latin1"), content]);
  const made = Buffer.alloc(typed.length + 8);
  made.writeUInt32BE(content.length, 0);
  typed.copy(made, 4);
  made.writeUInt32BE(checksum(typed), typed.length + 4);
  return made;
}

/** CRC-32 as the PNG specification has it; Node 20 has none of its own. @param {Buffer} bytes */
function checksum(bytes) {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

const folder = process.argv[2];
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, "icon.svg"), svg());
writeFileSync(join(folder, "icon-192.png"), png(192, 12));
writeFileSync(join(folder, "icon-512.png"), png(512, 32));
// all within the circle that a phone may cut out
writeFileSync(join(folder, "icon-maskable-512.png"), png(512, 24));
writeFileSync(join(folder, "apple-touch-icon.png"), png(180, 12));

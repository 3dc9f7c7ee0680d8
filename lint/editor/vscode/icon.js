// Draws the extension's icon as a PNG: a loaded bar, and under it the wavy line that says "look here".
import { deflateSync } from "node:zlib";

const SIZE = 256;
const SAMPLES = 4;
const GROUND = [24, 42, 58];
const STEEL = [226, 232, 236];
const AMBER = [247, 169, 40];

/** Distance of a point to a rectangle with round corners, below 0 within it. */
function toRectangle(x, y, left, top, right, bottom, radius) {
  const across = Math.abs(x - (left + right) / 2) - (right - left) / 2 + radius;
  const down = Math.abs(y - (top + bottom) / 2) - (bottom - top) / 2 + radius;
  return Math.hypot(Math.max(across, 0), Math.max(down, 0)) + Math.min(Math.max(across, down), 0) - radius;
}

function isBar(x, y) {
  const mirrored = Math.abs(x - SIZE / 2);
  return [
    [-1, 92, 108, 104],
    [52, 50, 70, 146],
    [75, 64, 90, 132],
  ].some(([near, top, far, bottom]) => toRectangle(mirrored, y, near, top, far, bottom, near < 0 ? 0 : 5) < 0);
}

/** Within a wave of three and a half turns, of an even thickness, round at its ends. */
function isWave(x, y) {
  const turn = (2 * Math.PI) / 52;
  const [from, to, middle] = [37, 219, 194];
  const height = middle + 13 * Math.sin((x - from) * turn);
  const slope = 13 * turn * Math.cos((x - from) * turn);
  if (Math.min(Math.hypot(x - from, y - middle), Math.hypot(x - to, y - middle)) < 6) return true;
  return x > from && x < to && Math.abs(y - height) / Math.hypot(1, slope) < 6;
}

/** Colour and opacity (0-1) of a point. */
function at(x, y) {
  if (toRectangle(x, y, 0, 0, SIZE, SIZE, 44) > 0) return [GROUND, 0];
  return [isWave(x, y) ? AMBER : isBar(x, y) ? STEEL : GROUND, 1];
}

/** Red, green, blue and opacity (0-255) of a pixel: the mean of points within it. */
function pixel(column, row) {
  const sum = [0, 0, 0, 0];
  for (let point = 0; point < SAMPLES ** 2; point += 1) {
    const x = column + ((point % SAMPLES) + 0.5) / SAMPLES;
    const y = row + (Math.floor(point / SAMPLES) + 0.5) / SAMPLES;
    const [colour, opacity] = at(x, y);
    colour.forEach((part, index) => (sum[index] += part * opacity));
    sum[3] += opacity;
  }
  const weight = sum[3] || 1;
  return [...sum.slice(0, 3).map((part) => Math.round(part / weight)), Math.round((255 * sum[3]) / SAMPLES ** 2)];
}

function checksum(bytes) {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}

/** A chunk of a PNG file (ISO/IEC 15948): length, kind, data, checksum of the two. */
function chunk(kind, data) {
  const body = Buffer.concat([Buffer.from(kind, "latin1"), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(checksum(body), body.length + 4);
  return framed;
}

/** The icon as the bytes of a PNG file. */
export function icon() {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(SIZE, 0);
  head.writeUInt32BE(SIZE, 4);
  head.set([8, 6], 8);
  const rows = Array.from({ length: SIZE }, (_, row) => [
    0,
    ...Array.from({ length: SIZE }, (_, column) => pixel(column, row)).flat(),
  ]);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(Buffer.from(rows.flat()), { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

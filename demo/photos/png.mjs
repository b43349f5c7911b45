// Makes a PNG small: a flat drawing needs no more than 256 colours, so its pixels become one byte each.
import { deflateSync, inflateSync, crc32 } from 'node:zlib';

const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);

/** The same picture with a palette, from an 8-bit RGB or RGBA picture that is not interlaced. */
export function withPalette(png) {
  const { width, height, channels, packed } = parts(png);
  const pixels = unfiltered(inflateSync(packed), width, height, channels);
  const { palette, indexes } = reduced(pixels, channels);
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y++) indexes.copy(rows, y * (width + 1) + 1, y * width, (y + 1) * width);
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([signature, chunk('IHDR', header), chunk('PLTE', palette), chunk('IDAT', deflateSync(rows, { level: 9 })), chunk('IEND', Buffer.alloc(0))]);
}

function parts(png) {
  let at = 8, header;
  const packed = [];
  while (at < png.length) {
    const length = png.readUInt32BE(at);
    const kind = png.toString('latin1', at + 4, at + 8);
    const body = png.subarray(at + 8, at + 8 + length);
    if (kind === 'IHDR') header = body;
    if (kind === 'IDAT') packed.push(body);
    at += 12 + length;
  }
  const channels = { 2: 3, 6: 4 }[header[9]];
  if (header[8] !== 8 || !channels || header[12] !== 0) throw new Error('not an 8-bit RGB picture');
  return { width: header.readUInt32BE(0), height: header.readUInt32BE(4), channels, packed: Buffer.concat(packed) };
}

// the five filters of the PNG specification, section 9.2
function unfiltered(rows, width, height, channels) {
  const stride = width * channels;
  const pixels = Buffer.alloc(stride * height);
  for (let y = 0; y < height; y++) {
    const filter = rows[y * (stride + 1)];
    for (let i = 0; i < stride; i++) {
      const left = i >= channels ? pixels[y * stride + i - channels] : 0;
      const above = y > 0 ? pixels[(y - 1) * stride + i] : 0;
      const corner = y > 0 && i >= channels ? pixels[(y - 1) * stride + i - channels] : 0;
      const guess = [0, left, above, (left + above) >> 1, nearest(left, above, corner)][filter];
      pixels[y * stride + i] = rows[y * (stride + 1) + 1 + i] + guess;
    }
  }
  return pixels;
}

function nearest(left, above, corner) {
  const guess = left + above - corner;
  const [a, b, c] = [left, above, corner].map(v => Math.abs(guess - v));
  return a <= b && a <= c ? left : b <= c ? above : corner;
}

/** The 256 commonest colours at 5 bits a channel; the few others take the nearest of them. */
function reduced(pixels, channels) {
  const count = pixels.length / channels;
  const keys = new Uint16Array(count);
  const often = new Map();
  for (let i = 0; i < count; i++) {
    const [r, g, b] = pixels.subarray(i * channels, i * channels + 3);
    keys[i] = (r >> 3) << 10 | (g >> 3) << 5 | b >> 3;
    const seen = often.get(keys[i]);
    if (seen) seen.times++; else often.set(keys[i], { times: 1, rgb: [r, g, b] });
  }
  const kept = [...often.values()].sort((a, b) => b.times - a.times).slice(0, 256);
  const near = new Map();
  for (const [key, { rgb }] of often) {
    let best = 0, least = Infinity;
    kept.forEach((k, i) => {
      const far = rgb.reduce((sum, v, c) => sum + (v - k.rgb[c]) ** 2, 0);
      if (far < least) [best, least] = [i, far];
    });
    near.set(key, best);
  }
  const indexes = Buffer.alloc(count);
  for (let i = 0; i < count; i++) indexes[i] = near.get(keys[i]);
  return { palette: Buffer.from(kept.flatMap(k => k.rgb)), indexes };
}

function chunk(kind, body) {
  const named = Buffer.concat([Buffer.from(kind, 'latin1'), body]);
  const whole = Buffer.alloc(named.length + 8);
  whole.writeUInt32BE(body.length, 0);
  named.copy(whole, 4);
  whole.writeUInt32BE(crc32(named), named.length + 4);
  return whole;
}

// A few strokes for drawing a van on paper: views, callouts, page. Nothing here knows a particular picture.

export const ink = {
  paper: '#f7f2e6', line: '#2b2721', faint: '#c9bfa9', part: '#ece3cf', wood: '#e2cfa6', metal: '#cfd3d6', soft: '#e9e3f0',
  subject: '#a9cbdc', water: '#2f74a8', fault: '#b3261e', air: '#b0722a', dark: '#6b6354', good: '#2e6b3c',
};

const escaped = text => String(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
const attributes = given => Object.entries(given).map(([name, value]) => ` ${name.replaceAll(/[A-Z]/g, c => '-' + c.toLowerCase())}="${escaped(value)}"`).join('');
const n = value => Math.round(value * 10) / 10;

export const rect = (x, y, w, h, fill = ink.part, more = {}) =>
  `<rect x="${n(x)}" y="${n(y)}" width="${n(w)}" height="${n(h)}"${attributes({ fill, stroke: ink.line, strokeWidth: 2, ...more })}/>`;
export const circle = (x, y, r, fill = ink.part, more = {}) =>
  `<circle cx="${n(x)}" cy="${n(y)}" r="${n(r)}"${attributes({ fill, stroke: ink.line, strokeWidth: 2, ...more })}/>`;
export const path = (d, more = {}) => `<path d="${d}"${attributes({ fill: 'none', stroke: ink.line, strokeWidth: 2, strokeLinejoin: 'round', strokeLinecap: 'round', ...more })}/>`;
export const line = (x1, y1, x2, y2, more = {}) => path(`M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}`, more);
export const text = (x, y, words, more = {}) =>
  [].concat(words).map((w, i) => `<text x="${n(x)}" y="${n(y + i * (more.fontSize ?? 22) * 1.25)}"${attributes({ fill: ink.line, fontSize: 22, ...more })}>${escaped(w)}</text>`).join('');

/** An arrow with its head at the second point. */
export function arrow(x1, y1, x2, y2, more = {}) {
  const turn = Math.atan2(y2 - y1, x2 - x1);
  const head = side => `${n(x2 - 16 * Math.cos(turn + side))} ${n(y2 - 16 * Math.sin(turn + side))}`;
  return line(x1, y1, x2, y2, { strokeWidth: 3, ...more }) + path(`M${head(0.45)}L${n(x2)} ${n(y2)}L${head(-0.45)}`, { strokeWidth: 3, ...more });
}

/** A measure between two points with its words at the middle. */
export function measure(x1, y1, x2, y2, words, { colour = ink.line, dx = 8, dy = -8 } = {}) {
  const more = { stroke: colour, strokeWidth: 2 };
  return arrow((x1 + x2) / 2, (y1 + y2) / 2, x1, y1, more) + arrow((x1 + x2) / 2, (y1 + y2) / 2, x2, y2, more)
    + text((x1 + x2) / 2 + dx, (y1 + y2) / 2 + dy, words, { fill: colour, fontSize: 22, fontWeight: 'bold' });
}

/** Words in a ruled slip, joined by a line to the place they speak of; a fault also carries its triangle. */
export function callout(atX, atY, x, y, words, { fault = true, width } = {}) {
  const lines = [].concat(words);
  const colour = fault ? ink.fault : ink.line;
  const w = width ?? Math.max(...lines.map(l => l.length)) * 12.1 + (fault ? 62 : 28);
  const h = lines.length * 27 + 20;
  const edgeX = Math.min(Math.max(atX, x), x + w);
  const edgeY = Math.min(Math.max(atY, y), y + h);
  const sign = fault ? path(`M${x + 12} ${y + 36}L${x + 25} ${y + 12}L${x + 38} ${y + 36}Z`, { fill: '#fff', stroke: colour, strokeWidth: 3 }) + text(x + 22, y + 33, '!', { fill: colour, fontSize: 18, fontWeight: 'bold' }) : '';
  return line(edgeX, edgeY, atX, atY, { stroke: colour, strokeWidth: 2.5 }) + circle(atX, atY, 6, colour, { stroke: '#fff' })
    + rect(x, y, w, h, '#fffdf7', { stroke: colour, strokeWidth: 2.5, rx: 3 }) + sign
    + text(x + (fault ? 48 : 14), y + 30, lines, { fontSize: 21 });
}

/** Hatching of a cut or damp place. */
export function hatch(x, y, w, h, colour = ink.line, gap = 12) {
  const strokes = [];
  for (let s = -h; s < w; s += gap) {
    const from = Math.max(0, s), to = Math.min(w, s + h);
    strokes.push(`M${n(x + from)} ${n(y + h - (from - s))}L${n(x + to)} ${n(y + h - (to - s))}`);
  }
  return path(strokes.join(''), { stroke: colour, strokeWidth: 1.5 });
}

/** A drop of water. */
export const drop = (x, y, r = 9) => path(`M${x} ${y - 1.8 * r}C${x + 0.4 * r} ${y - r} ${x + r} ${y - 0.5 * r} ${x + r} ${y}A${r} ${r} 0 1 1 ${x - r} ${y}C${x - r} ${y - 0.5 * r} ${x - 0.4 * r} ${y - r} ${x} ${y - 1.8 * r}Z`, { fill: ink.water, stroke: ink.water });

const views = {
  // seen from the left wall: front of the van to the left, roof up
  side: { across: 0, up: 2 },
  // seen from above: front to the left, right wall at the bottom
  plan: { across: 0, up: 1 },
  // seen from behind
  cross: { across: 1, up: 2 },
};

/**
 * A view of a van at a scale: its outline, chosen parts faint, some as the subject.
 * Gives the drawing and `at(x, y, z)`, the place of a point of the van on the paper.
 */
export function view(van, kind, { x, y, scale, faint = [], subject = [], label = [] }) {
  const { across, up } = views[kind];
  const size = [van.length, van.width, van.height];
  const down = kind === 'plan';
  const at = (...mm) => [x + mm[across] * scale, down ? y + mm[up] * scale : y + (size[up] - mm[up]) * scale];
  const box = ([bx, by, bz, l, w, h]) => {
    const [x0, y0] = at(bx, by, bz);
    const [x1, y1] = at(bx + l, by + w, bz + h);
    return [Math.min(x0, x1), Math.min(y0, y1), Math.abs(x1 - x0), Math.abs(y1 - y0)];
  };
  let drawn = rect(x, y, size[across] * scale, size[up] * scale, '#fffdf7', { strokeWidth: 3 });
  const { from, to, width, height } = van.arches;
  const arches = kind === 'plan' ? [[from, 0, 0, to - from, width, 0], [from, van.width - width, 0, to - from, width, 0]]
    : kind === 'side' ? [[from, 0, 0, to - from, 0, height]] : [[0, 0, 0, 0, width, height], [0, van.width - width, 0, 0, width, height]];
  for (const a of arches) drawn += rect(...box(a), 'none', { stroke: ink.dark, strokeDasharray: '7 5' });
  if (kind === 'side') for (const b of van.bows) drawn += rect(...box([b - 20, 0, van.height - 22, 40, 0, 22]), ink.metal, { strokeWidth: 1.5 });
  if (kind === 'plan') {
    const [d0, dy] = at(van.door.from, van.width, 0);
    const [d1] = at(van.door.to, van.width, 0);
    drawn += line(d0, dy, d1, dy, { stroke: '#fffdf7', strokeWidth: 6 }) + line(d0, dy + 6, d1, dy + 6, { stroke: ink.dark, strokeDasharray: '12 6' });
  }
  for (const id of faint) drawn += rect(...box(van.parts[id]), ink.part, { stroke: ink.faint, fillOpacity: 0.55 });
  for (const id of subject) drawn += rect(...box(van.parts[id]), ink.subject, { fillOpacity: 0.85 });
  for (const id of label) {
    const [bx, by, bw, bh] = box(van.parts[id]);
    drawn += text(bx + bw / 2, by + bh / 2 + 6, id, { fontSize: 17, textAnchor: 'middle', fill: ink.dark });
  }
  return { drawn, at, box: id => box(van.parts[id]) };
}

/** Words in lines of at most so many letters. */
function wrapped(words, most) {
  const lines = [''];
  for (const word of words.split(' ')) {
    if (`${lines.at(-1)} ${word}`.length > most) lines.push('');
    lines[lines.length - 1] = `${lines.at(-1)} ${word}`.trimStart();
  }
  return lines;
}

/** The sheet: title, rule, the drawing, and at the foot what it is not. */
export const sheet = (title, under, drawn) => `<svg xmlns="http://www.w3.org/2000/svg" width="1200" height="800" viewBox="0 0 1200 800" font-family="DejaVu Sans, sans-serif">
${rect(0, 0, 1200, 800, ink.paper, { stroke: 'none' })}${rect(14, 14, 1172, 772, 'none', { stroke: ink.dark, strokeWidth: 1.5 })}
${text(40, 58, title, { fontSize: 30, fontWeight: 'bold' })}${text(40, 86, wrapped(under, 108), { fontSize: 18, fill: ink.dark })}
${line(40, 120, 1160, 120, { stroke: ink.dark, strokeWidth: 1.5 })}
${drawn}
${line(40, 746, 1160, 746, { stroke: ink.dark, strokeWidth: 1.5 })}${text(40, 773, 'Invented van. Drawing, not a photo.', { fontSize: 18, fill: ink.dark })}
</svg>
`;

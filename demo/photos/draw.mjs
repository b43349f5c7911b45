// Draws the pictures of the two invented vans: SVG, then PNG by the machine's Chromium.
//   node draw.mjs [part of a name]      WAIN_CHROMIUM names another browser
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { sheet } from './pen.mjs';
import { withPalette } from './png.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const browser = process.env.WAIN_CHROMIUM ?? ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);
if (!browser) throw new Error('no Chromium found: name it in WAIN_CHROMIUM');

const sets = [];
for (const [file, van] of [['camper.mjs', 'Touring camper'], ['workshop.mjs', 'Bicycle workshop']])
  if (existsSync(join(here, file))) sets.push({ van, pictures: (await import(`./${file}`)).pictures });

const wanted = process.argv[2] ?? '';
const scratch = mkdtempSync(join(tmpdir(), 'draw-'));
try {
  for (const { van, pictures } of sets)
    for (const picture of pictures.filter(p => p.name.includes(wanted))) {
      const svg = join(scratch, `${picture.name}.svg`);
      const png = join(scratch, `${picture.name}.png`);
      const title = `${van}${picture.findings.length ? ` · ${picture.findings.join(', ')}` : ''}`;
      writeFileSync(svg, sheet(title, picture.shows, picture.draw()));
      const run = spawnSync(browser, ['--headless', '--no-sandbox', '--disable-gpu', '--hide-scrollbars', '--disable-dev-shm-usage', '--no-first-run',
        `--user-data-dir=${join(scratch, 'profile')}`, '--window-size=1200,800', `--screenshot=${png}`, pathToFileURL(svg).href], { encoding: 'utf8' });
      if (!existsSync(png)) throw new Error(`${picture.name}: ${run.stderr}`);
      writeFileSync(join(here, `${picture.name}.png`), withPalette(readFileSync(png)));
    }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}

const rows = sets.flatMap(({ pictures }) => pictures.map(p => {
  const bytes = readFileSync(join(here, `${p.name}.png`));
  return `| ${p.name}.png | ${p.findings.join(', ') || '–'} | ${p.shows} | \`${createHash('sha256').update(bytes).digest('hex')}\` |`;
}));
writeFileSync(join(here, 'README.md'), `# Pictures of the two invented vans

Drawn by \`node draw.mjs\` (Node 20, the machine's Chromium), because the vans are invented and there is nothing to photograph.
Each says so at its foot, and in the job files each is marked \`"drawn": true\`. A job file refers to a picture by the SHA-256
of its bytes, media type \`image/png\`; drawing anew on another machine may give other bytes, so the committed files are the ones that count.

| file | findings | shows | SHA-256 |
| --- | --- | --- | --- |
${rows.join('\n')}
`);
const stray = readdirSync(here).filter(f => f.endsWith('.png') && !sets.some(s => s.pictures.some(p => `${p.name}.png` === f)));
if (stray.length) console.error(`not drawn by this script: ${stray.join(', ')}`);

// The mobile bicycle workshop's pictures.
import { ink, rect, circle, path, line, text, arrow, measure, callout, hatch, drop, view } from './pen.mjs';
import { workshop } from './outlines.mjs';

const racks = ['B03', 'B04', 'B05'];
const inside = ['B03', 'B04', 'B05', 'B06', 'B07', 'B08', 'B09', 'B30', 'B31', 'B33', 'B34', 'B42', 'B30r', 'B41'];

export const pictures = [
  {
    name: 'workshop-01-as-found', findings: [], shows: 'the workshop van as it came in, seen from the left and from above',
    draw() {
      const side = view(workshop, 'side', { x: 150, y: 140, scale: 0.2, faint: inside, label: ['B03', 'B04', 'B05', 'B30'] });
      const plan = view(workshop, 'plan', { x: 150, y: 450, scale: 0.165, faint: ['B02', 'B06', 'B09', 'B10', 'B11', 'B33', 'B35', 'B36', 'B37', ...racks], subject: ['B14', 'B15', 'B17', 'B31'], label: [...racks, 'B33', 'B10', 'B11', 'B31'] });
      const [bx, by] = side.at(1270, 400, 1150);
      const [px, py] = plan.at(2600, 1450, 0);
      return side.drawn + plan.drawn
        + callout(bx, by, 790, 190, ['rack bay 2 walks', 'when braking'])
        + callout(px, py, 790, 560, ['hot smell here when', 'the compressor runs']) + text(150, 440, 'front of the van to the left', { fontSize: 18, fill: ink.dark });
    },
  },
  {
    name: 'workshop-02-hot-fuse', findings: ['K1'], shows: 'browned main fuse holder B17 with a washer between lug and fuse, 118 °C after 11 min at 2 150 W',
    draw: () => rect(120, 200, 560, 400, ink.metal, { rx: 8 }) + rect(220, 320, 360, 130, '#7d5a3a', { rx: 10 }) + rect(330, 345, 140, 80, '#d8d2c4') + text(400, 395, '300 A', { textAnchor: 'middle', fontSize: 28, fontWeight: 'bold' })
      + [250, 550].map(x => circle(x, 385, 34, ink.metal) + path(`M${x - 16} 385L${x - 8} 371L${x + 8} 371L${x + 16} 385L${x + 8} 399L${x - 8} 399Z`, { fill: '#9aa0a4' })).join('')
      + hatch(222, 322, 110, 126, '#4a2e18', 9) + path('M216 385C150 385 130 420 120 520L120 690', { stroke: '#8a1c14', strokeWidth: 34 }) + path('M584 385C660 385 690 420 700 690', { stroke: '#8a1c14', strokeWidth: 34 })
      + circle(250, 385, 44, 'none', { stroke: ink.fault, strokeWidth: 6, strokeDasharray: '10 6' })
      + callout(250, 345, 60, 140, ['washer between lug and fuse: 118 °C'])
      + callout(470, 450, 720, 300, ['holder browned, 91 °C', '0.42 V across it at 208 A'])
      + callout(690, 560, 740, 470, ['35 mm² cable: jacket 96 °C', 'behind a 300 A fuse'])
      + callout(550, 385, 740, 180, ['nut turned at 2 Nm']),
  },
  {
    name: 'workshop-03-water-over-batteries', findings: ['K2', 'K3'], shows: 'parts washer B30 with 30 l of water above the batteries B14 and B15 and beside the fuse plate B17, splash lines on the plate',
    draw() {
      const v = view(workshop, 'cross', { x: 100, y: 150, scale: 0.41, faint: ['B02'], subject: ['B30'], label: [] });
      const at = id => v.box(id);
      const fill = (id, colour) => rect(...at(id), colour);
      const [wx, wy, ww] = at('B30');
      return v.drawn + fill('B31', ink.metal) + fill('B14', '#5c6a5a') + fill('B15', '#5c6a5a') + fill('B16', '#8b8f92') + fill('B30', ink.subject) + fill('B17', '#c98f4f')
        + text(wx + ww / 2, wy + 90, 'B30', { textAnchor: 'middle', fontSize: 24 }) + rect(wx + 8, wy + 110, ww - 16, 80, ink.water, { stroke: 'none', fillOpacity: 0.5 })
        + drop(wx + ww + 6, wy + 130) + drop(wx + ww + 10, wy + 165) + drop(wx + 60, at('B14')[1] - 14)
        + text(at('B14')[0] + 35, at('B14')[1] + 52, 'B14', { textAnchor: 'middle', fontSize: 18, fill: '#fff' }) + text(at('B15')[0] + 35, at('B15')[1] + 52, 'B15', { textAnchor: 'middle', fontSize: 18, fill: '#fff' })
        + callout(wx + ww + 8, wy + 150, 830, 330, ['splash lines on the', 'fuse plate B17']) + callout(wx + 60, wy + 160, 830, 200, ['30 l of water over', 'two batteries'])
        + callout(at('B15')[0] + 40, at('B15')[1] + 20, 830, 520, ['no strap: each moves', '22 mm by hand']) + arrow(at('B14')[0] - 6, at('B14')[1] + 40, at('B14')[0] - 60, at('B14')[1] + 40, { stroke: ink.fault });
    },
  },
  {
    name: 'workshop-04-rack-walks', findings: ['K4'], shows: 'rack bay 2, B04: its top moves 14 mm at 300 N forward, a wall-tie screw is torn out and a foot bolt is missing',
    draw() {
      const v = view(workshop, 'side', { x: 90, y: 160, scale: 0.355, faint: ['B03', 'B05', 'B34'], subject: ['B04'], label: ['B03', 'B05'] });
      const [x, y, w, h] = v.box('B04');
      return v.drawn + path(`M${x - 26} ${y}L${x + w - 26} ${y}L${x + w} ${y + h}L${x} ${y + h}Z`, { stroke: ink.fault, strokeWidth: 3, strokeDasharray: '9 6' })
        + text(x + w / 2, y + h / 2, 'B04', { textAnchor: 'middle', fontSize: 26 }) + text(x + w / 2, y + h / 2 + 32, '134 kg', { textAnchor: 'middle', fontSize: 20 })
        + arrow(x - 20, y + 40, x - 100, y + 40, { stroke: ink.fault }) + line(...v.at(60, 0, 1195), ...v.at(2510, 0, 1195), { strokeWidth: 6, stroke: '#80868a' })
        + callout(x - 26, y, 110, 330, ['top moves', '14 mm at 300 N']) + callout(x + 60, y - 12, 780, 250, ['tie screw torn from', 'the upper rail B26a']) + callout(x + 20, y + h, 620, 655, ['one of four foot bolts missing;', 'the others hold in ply only']);
    },
  },
  {
    name: 'workshop-05-feet-over-arch', findings: ['K5'], shows: 'feet of rack bay 3, B05, on the wheel arch: thin skin dimpled 2 mm, no load plate',
    draw: () => path('M80 560C200 560 220 420 340 400L860 400C980 420 1000 560 1120 560', { strokeWidth: 9, stroke: '#80868a' }) + path('M430 400C450 400 458 424 480 424L560 424C582 424 590 400 610 400', { strokeWidth: 9, stroke: ink.fault })
      + rect(478, 360, 84, 62, ink.metal) + rect(490, 150, 60, 212, ink.subject) + rect(440, 140, 160, 26, ink.subject) + rect(494, 330, 14, 130, '#80868a') + rect(532, 330, 14, 130, '#80868a')
      + text(340, 620, 'wheel arch, skin thickness not measured', { fontSize: 20, fill: ink.dark }) + measure(640, 400, 640, 424, '2 mm', { colour: ink.fault, dx: 14, dy: 8 })
      + callout(520, 426, 700, 470, ['arch skin dimpled', '4 M6 through one thin skin']) + callout(496, 350, 90, 220, ['riser without', 'a load plate']),
  },
  {
    name: 'workshop-06-bike-rail', findings: ['K6'], shows: 'ceiling bike rail B30r: two of six rivet-nuts spin under 45 kg of bicycles',
    draw() {
      const v = view(workshop, 'side', { x: 90, y: 180, scale: 0.355, faint: racks, subject: ['B30r'] });
      const bolts = [320, 380, 1630, 1690, 2320, 2380].map((x, i) => [...v.at(x, 0, 1340), i]);
      const wheel = (x, y) => circle(x, y, 62, 'none', { stroke: ink.dark, strokeWidth: 4 }) + circle(x, y, 6, ink.dark);
      const bicycle = (x, y) => line(x + 10, y - 165, x + 10, y - 78, { strokeWidth: 5 }) + wheel(x - 62, y) + wheel(x + 82, y) + path(`M${x - 62} ${y}L${x - 22} ${y - 78}L${x + 60} ${y - 78}L${x + 82} ${y}M${x - 22} ${y - 78}L${x + 10} ${y}L${x + 60} ${y - 78}M${x - 62} ${y}L${x + 10} ${y}`, { strokeWidth: 4 });
      return v.drawn + bicycle(330, 370) + bicycle(640, 370)
        + bolts.map(([x, y, i]) => circle(x, y, 10, i === 2 || i === 3 ? ink.fault : ink.good)).join('')
        + callout(bolts[2][0] + 8, bolts[2][1], 520, 560, ['two rivet-nuts at bow 3 spin:', 'they hold nothing']) + callout(340, 250, 110, 640, ['45 kg overhead'], { fault: false });
    },
  },
  {
    name: 'workshop-07-unrestrained', findings: ['K7'], shows: 'compressor B11 without a strap, truing stand B09 without a lock, parts washer B30 lifts out of its cups',
    draw() {
      const v = view(workshop, 'side', { x: 90, y: 180, scale: 0.355, faint: ['B06', 'B07', 'B10', 'B31'], subject: ['B11', 'B09', 'B30'], label: ['B11', 'B09', 'B30'] });
      const [cx, cy, cw, ch] = v.box('B11');
      const [sx, sy, sw] = v.box('B09');
      const [wx, wy, ww, wh] = v.box('B30');
      return v.drawn + arrow(cx, cy + ch - 40, cx - 70, cy + ch - 40, { stroke: ink.fault }) + arrow(wx + ww / 2, wy + 20, wx + ww / 2, wy - 60, { stroke: ink.fault })
        + callout(cx, cy + ch - 40, 100, 640, ['compressor slides 40 mm on rubber feet']) + callout(sx + sw / 2, sy + 30, 560, 140, ['truing stand: wing bolts, no lock']) + callout(wx + ww / 2, wy + wh - 10, 800, 690, ['30 kg washer in cups']);
    },
  },
  {
    name: 'workshop-08-earth-lug', findings: ['K8'], shows: 'earth lug of B23 bolted over paint, green corrosion, 0.31 V drop at 208 A',
    draw: () => rect(100, 430, 700, 60, '#b9c4cc') + rect(100, 424, 700, 8, '#3d6b8a', { stroke: 'none' }) + rect(330, 386, 260, 38, '#c9a24a', { rx: 6 }) + path('M590 405C720 405 760 380 860 240', { stroke: ink.line, strokeWidth: 36 }) + path('M330 386L300 395L300 420L330 424Z', { fill: '#c9a24a' })
      + rect(420, 350, 80, 36, '#9aa0a4') + rect(440, 280, 40, 270, '#9aa0a4') + rect(418, 490, 84, 34, '#9aa0a4') + [350, 372, 398, 520, 548].map((x, i) => circle(x, 418 + (i % 2) * 7, 8, '#5c9a6b', { stroke: 'none' })).join('')
      + text(110, 525, 'body sheet', { fontSize: 20, fill: ink.dark }) + callout(580, 428, 640, 560, ['paint left under the lug'], {}) + callout(372, 420, 90, 250, ['green corrosion']) + callout(800, 330, 760, 150, ['25 mm² lead,', '0.31 V at 208 A']),
  },
  {
    name: 'workshop-09-out-of-date', findings: ['K9'], shows: 'extinguisher B38 two years past service, eyewash bottle in B39 expired',
    draw: () => rect(200, 250, 170, 380, '#b23a30', { rx: 60 }) + rect(255, 196, 60, 56, '#4a4f52') + path('M315 215L400 250L410 380', { strokeWidth: 10 }) + rect(222, 370, 126, 150, '#fffdf7') + text(285, 410, ['powder', '6 kg'], { textAnchor: 'middle', fontSize: 22 }) + text(285, 490, 'service due', { textAnchor: 'middle', fontSize: 15 })
      + rect(640, 330, 330, 270, '#3f7d54', { rx: 10 }) + path('M770 420h28v-28h28v28h28v28h-28v28h-28v-28h-28Z', { fill: '#fff', stroke: '#fff' }) + rect(665, 510, 60, 80, '#cfe4ee', { rx: 10 }) + rect(735, 510, 60, 80, '#cfe4ee', { rx: 10 })
      + callout(285, 505, 90, 660, ['last service: two years overdue']) + callout(765, 550, 640, 650, ['one eyewash bottle expired']),
  },
  {
    name: 'workshop-10-awning-bracket', findings: ['K11'], shows: 'centre bracket of the awning B41 turns by hand on its M8',
    draw: () => rect(90, 380, 1020, 90, '#d7d7d2', { rx: 40 }) + path('M90 560L1110 560', { strokeWidth: 8, stroke: '#80868a' }) + [200, 600, 1000].map(x => rect(x - 34, 440, 68, 130, ink.metal) + circle(x, 540, 18, x === 600 ? '#e6b0aa' : '#9aa0a4')).join('')
      + path('M546 520A62 62 0 0 1 640 500', { stroke: ink.fault, strokeWidth: 5 }) + arrow(632, 494, 652, 512, { stroke: ink.fault }) + text(110, 610, 'roof gutter, left side', { fontSize: 20, fill: ink.dark }) + callout(600, 540, 640, 640, ['centre bracket turns by hand']) + callout(320, 420, 200, 230, ['24 kg beyond the roof edge'], { fault: false }),
  },
  {
    name: 'workshop-11-rust-streak', findings: ['K12', 'K4'], shows: 'rust streak on the outside at x 1 250 below the stripped screws of the rail B26a; lining 19 % behind it',
    draw() {
      const v = view(workshop, 'side', { x: 90, y: 180, scale: 0.355 });
      const [x, y] = v.at(1250, 0, 1185);
      return v.drawn + [180, 430, 680, 930, 1250, 1500, 1750, 2000, 2200, 2440].map(s => { const [sx, sy] = v.at(s, 0, 1185); return circle(sx, sy, 6, [930, 1250, 1500, 2000].includes(s) ? ink.fault : '#9aa0a4'); }).join('')
        + path(`M${x - 4} ${y + 4}C${x - 10} ${y + 90} ${x + 4} ${y + 150} ${x - 2} ${y + 260}`, { stroke: '#a2562a', strokeWidth: 12, strokeOpacity: 0.75 })
        + callout(x, y + 140, 640, 330, ['rust streak outside;', 'lining behind: 19 %,', 'elsewhere 11 to 12 %']) + callout(...v.at(930, 0, 1185), 110, 140, ['4 of 10 screws stripped']);
    },
  },
  {
    name: 'workshop-12-ceiling-sag', findings: ['K14'], shows: 'ceiling panel B29 sags 5 mm between bows, three rivets gone',
    draw: () => [150, 450, 750, 1050].map(x => rect(x - 25, 260, 50, 40, ink.metal)).join('') + path('M100 304L450 304Q600 360 750 304L1110 304', { strokeWidth: 10, stroke: '#b99f6a' }) + [150, 300, 450, 750, 900, 1050].map(x => circle(x, 305, 8, '#5d6468')).join('')
      + [525, 600, 675].map(x => circle(x, x === 600 ? 330 : 322, 9, '#fffdf7', { stroke: ink.fault, strokeWidth: 4 })).join('') + line(450, 304, 750, 304, { strokeDasharray: '6 6', stroke: ink.dark }) + measure(600, 304, 600, 332, '5 mm', { colour: ink.fault, dx: 20, dy: 50 }) + callout(530, 326, 220, 480, ['three rivets gone between', 'bow 2 and bow 3']),
  },
];

// The touring camper's pictures.
import { ink, rect, circle, path, line, text, arrow, measure, callout, hatch, drop, view } from './pen.mjs';
import { camper } from './outlines.mjs';

const furniture = ['A20', 'A21', 'A25', 'A26', 'A27', 'A29', 'A30', 'A31', 'A34', 'A41', 'A42', 'A45', 'A49'];
const fromAbove = ['A20', 'A29', 'A31', 'A32', 'A33', 'A34', 'A41', 'A45', 'A61'];
const screw = (x, y, length, up = false) => path(`M${x - 12} ${y}L${x + 12} ${y}L${x + 5} ${y + (up ? -8 : 8)}L${x + 5} ${y + (up ? 12 - length : length - 12)}L${x} ${y + (up ? -length : length)}L${x - 5} ${y + (up ? 12 - length : length - 12)}L${x - 5} ${y + (up ? -8 : 8)}Z`, { fill: '#9aa0a4' });

export const pictures = [
  {
    name: 'camper-01-as-found', findings: [], shows: 'the touring camper as it came in, seen from the left and from above',
    draw() {
      const side = view(camper, 'side', { x: 70, y: 140, scale: 0.155, faint: furniture, subject: ['A14', 'A35'], label: ['A29', 'A42', 'A45', 'A34'] });
      const plan = view(camper, 'plan', { x: 70, y: 445, scale: 0.155, faint: fromAbove, subject: ['A14', 'A35', 'A52'], label: ['A20', 'A29', 'A31', 'A35', 'A41', 'A45'] });
      return side.drawn + plan.drawn + callout(...side.at(1500, 0, 1990), 700, 150, ['drip over the worktop after rain,', 'parked nose-down']) + callout(...plan.at(590, 165, 0), 700, 330, ['heater smokes white, stops,', 'smells in the seat'])
        + callout(...plan.at(1550, 600, 0), 700, 560, ['shower floor creaks, the step', 'outside gets wet']) + text(580, 730, 'front to the left', { fontSize: 18, fill: ink.dark });
    },
  },
  {
    name: 'camper-02-heater-tails', findings: ['F1'], shows: 'heater A52 and its tails A53 under the floor: loose exhaust clamp, soot fan 160 mm, intake crushed to 11 mm',
    draw: () => rect(60, 390, 1080, 16, ink.metal) + rect(60, 350, 1080, 40, ink.wood) + text(900, 340, 'floor', { fontSize: 18, fill: ink.dark }) + rect(320, 190, 420, 160, ink.subject, { rx: 12 }) + text(530, 280, 'A52 heater', { textAnchor: 'middle', fontSize: 26 }) + rect(400, 400, 34, 60, '#9aa0a4') + rect(620, 400, 30, 60, '#9aa0a4')
      + path('M417 460L417 540Q417 570 390 570L150 570', { stroke: '#8f8a83', strokeWidth: 30 }) + path('M635 460L635 540Q635 565 665 565L1060 565', { stroke: '#4c6a7d', strokeWidth: 26 }) + path('M820 552Q860 563 900 552L900 578Q860 567 820 578Z', { fill: ink.paper, stroke: ink.fault, strokeWidth: 3 })
      + rect(392, 440, 50, 18, '#c8b25a') + path('M442 450L480 410L500 470ZM442 455L520 440L470 500Z', { fill: '#3a3530', stroke: 'none', fillOpacity: 0.55 })
      + callout(395, 448, 70, 470, ['exhaust clamp', 'turns by hand']) + callout(490, 445, 440, 610, ['soot fan 160 mm:', 'exhaust gas leaks here']) + callout(860, 565, 790, 440, ['intake crushed by a jack:', 'bore 11 mm instead of 22']) + callout(330, 345, 60, 150, ['38 ppm CO here after 20 min'], {}),
  },
  {
    name: 'camper-03-co-alarm', findings: ['F2'], shows: 'back of the CO alarm A59: the date printed on it passed 14 months ago',
    draw: () => rect(330, 200, 540, 380, '#fdfdfb', { rx: 26 }) + rect(390, 260, 420, 230, '#eef0ee', { rx: 6 }) + text(600, 310, ['Carbon monoxide alarm', '', 'REPLACE BY'], { textAnchor: 'middle', fontSize: 26 }) + text(600, 445, '2025-01', { textAnchor: 'middle', fontSize: 54, fontWeight: 'bold', fill: ink.fault })
      + circle(390, 540, 13, '#cfd3d6') + circle(810, 540, 13, '#cfd3d6') + callout(700, 430, 640, 640, ['van came in on 2026-03-02']) + text(100, 660, ['A59, on the washroom’s', 'rear partition A33'], { fontSize: 20, fill: ink.dark }),
  },
  {
    name: 'camper-04-heater-volts', findings: ['F3'], shows: 'heater feed A65: 12.6 V at the board, 10.5 V at the heater plug with the glow pin drawing 9.5 A',
    draw() {
      const plan = view(camper, 'plan', { x: 110, y: 160, scale: 0.29, faint: ['A20', 'A32', 'A33', 'A34', 'A41'], subject: ['A29', 'A45'], label: ['A29', 'A45'] });
      const route = [[2880, 400], [2720, 50], [1940, 50], [430, 50]].map(([x, y]) => plan.at(x, y, 0));
      const meter = (x, y, volts) => rect(x, y, 150, 84, '#3b403c', { rx: 8 }) + text(x + 75, y + 56, `${volts} V`, { textAnchor: 'middle', fontSize: 34, fill: '#d6e6c8', fontWeight: 'bold' });
      return plan.drawn + path(`M${route.map(p => p.join(' ')).join('L')}`, { stroke: ink.fault, strokeWidth: 6 }) + meter(930, 400, '12.6') + meter(240, 400, '10.5') + line(1005, 400, ...route[0], { strokeDasharray: '6 5' }) + line(315, 400, ...route[3], { strokeDasharray: '6 5' })
        + callout(...plan.at(1500, 50, 0), 480, 560, ['2 × 5.4 m of 4 mm², two crimps:', '2.1 V lost at 9.5 A']);
    },
  },
  {
    name: 'camper-05-vent-sealant', findings: ['F4'], shows: 'roof vent A14 from above: sealant split 65 mm at the right front corner, roof swages not filled under the flange',
    draw() {
      const swages = [150, 270, 390, 510, 630].map(y => rect(60, y, 760, 34, '#dcdcd6', { stroke: ink.faint })).join('');
      return rect(60, 140, 760, 560, '#ecece7') + swages + rect(200, 200, 440, 440, '#f4f2ea', { rx: 20, strokeWidth: 10, stroke: '#b7b2a6' }) + rect(260, 260, 320, 320, '#c8d4da', { rx: 16 }) + text(420, 430, 'A14', { textAnchor: 'middle', fontSize: 30 })
        + path('M197 560C196 590 198 612 212 628C226 642 250 643 268 643', { stroke: ink.fault, strokeWidth: 9 }) + drop(180, 670, 12) + drop(230, 690, 10) + arrow(110, 250, 66, 250) + text(70, 235, 'front', { fontSize: 18 })
        + callout(205, 615, 850, 560, ['sealant split 65 mm,', 'right front corner']) + callout(640, 408, 845, 320, ['swages 8 mm deep,', 'not filled under it']) + text(850, 660, ['drip at the ring after', '3 min 40 s of hose'], { fontSize: 21 });
    },
  },
  {
    name: 'camper-06-ceiling-sag', findings: ['F5', 'F4'], shows: 'section across the van at bow 3: panel A10 sags 11 mm, wet from the vent to the right cornice and behind locker A25',
    draw() {
      const v = view(camper, 'cross', { x: 90, y: 150, scale: 0.3, faint: ['A34'], subject: ['A25'] });
      const [x0, y0] = v.at(0, 145, 1868), [x1] = v.at(0, 1705, 1868);
      return v.drawn + path(`M${x0} ${y0}Q${(x0 + x1) / 2 + 60} ${y0 + 26} ${x1} ${y0}`, { stroke: '#b99f6a', strokeWidth: 7 }) + rect(...v.at(0, 850, 1960).map((c, i) => c - (i ? 6 : 0)), 420 * 0.3, 30, ink.metal)
        + path(`M${v.at(0, 1250, 1872)}Q${v.at(0, 1500, 1880)} ${v.at(0, 1690, 1868)}L${v.at(0, 1816, 1600)}L${v.at(0, 1816, 1350)}`, { stroke: ink.water, strokeWidth: 9, strokeOpacity: 0.6 })
        + callout(...v.at(0, 1060, 1855), 740, 180, ['sags 11 mm at bow 3']) + callout(...v.at(0, 1280, 1868), 740, 280, ['33.5 % at P04,', 'batten 34 % at P06']) + callout(...v.at(0, 1660, 1868), 740, 400, ['28.5 % at the cornice, P08']) + callout(...v.at(0, 1814, 1590), 740, 500, ['26 % behind the locker, P09']) + text(v.box('A25')[0] + 20, v.box('A25')[1] + 60, 'A25', { fontSize: 20 });
    },
  },
  {
    name: 'camper-07-locker-screws', findings: ['F6'], shows: 'upper locker A25 in section: six of eight screws bite in 5 mm lining only, gap 6 mm at the top rear',
    draw: () => rect(820, 140, 16, 590, '#80868a') + text(845, 700, 'side skin', { fontSize: 18, fill: ink.dark }) + rect(756, 150, 60, 80, ink.metal) + text(842, 200, 'rib', { fontSize: 20 }) + rect(722, 360, 16, 360, ink.wood) + text(640, 735, 'lining 5 mm', { fontSize: 18, fill: ink.dark })
      + `<g transform="rotate(2 700 560)">${rect(300, 190, 400, 20, ink.subject)}${rect(300, 540, 400, 20, ink.subject)}${rect(680, 210, 20, 330, ink.subject)}</g>`
      + `<g transform="rotate(-90 700 500)">${screw(700, 480, 64)}</g><g transform="rotate(-90 690 220)">${screw(690, 230, 96)}</g>` + text(440, 400, 'A25', { fontSize: 34 }) + text(420, 436, '11 kg + 9 kg', { fontSize: 20 }) + arrow(330, 575, 330, 640, { stroke: ink.fault })
      + callout(712, 236, 880, 240, ['gap 6 mm']) + callout(734, 500, 880, 420, ['six screws hold in', '5 mm ply only']) + callout(790, 215, 880, 140, ['two reach the rib'], { fault: false }) + callout(330, 620, 60, 660, ['moves 4 mm at 150 N']),
  },
  {
    name: 'camper-08-tray-crack', findings: ['F7'], shows: 'shower tray A35: crack 70 mm at the waste, hollow span of 300 mm beneath, waste nut loose by a quarter turn',
    draw: () => rect(90, 150, 560, 540, '#f3f3ef', { rx: 30 }) + rect(120, 180, 500, 480, '#fbfbf8', { rx: 24, stroke: ink.faint }) + circle(270, 440, 46, '#cfd3d6') + circle(270, 440, 30, '#8f9599') + [0, 60, 120].map(a => `<g transform="rotate(${a} 270 440)">${line(246, 440, 294, 440)}</g>`).join('') + path('M312 420L340 402L352 412L384 384L398 392', { stroke: ink.fault, strokeWidth: 6 })
      + rect(700, 480, 420, 26, '#f3f3ef') + [712, 1078].map(x => rect(x, 506, 30, 90, ink.wood)).join('') + rect(850, 506, 110, 70, '#cfd3d6') + hatch(742, 590, 336, 12, ink.water, 8) + measure(742, 640, 1078, 640, '300 mm hollow', { dx: -60, dy: 34 }) + path('M700 480L860 492L900 508L1120 480', { stroke: ink.faint, strokeWidth: 2 })
      + callout(370, 394, 690, 160, ['crack 70 mm; dye reached the', 'plinth in 25 min']) + callout(262, 452, 690, 270, ['waste nut a quarter turn loose;', 'joint itself dry at 1 h']) + callout(905, 600, 690, 380, ['no support under the waste']),
  },
  {
    name: 'camper-09-wet-feet', findings: ['F8'], shows: 'washroom from above with the moisture of its feet, threshold and plinth; free water 6 mm deep in the bund',
    draw() {
      const scale = 0.63, at = (x, y) => [90 + (x - 1120) * scale, 150 + y * scale];
      const box = (x, y, l, w, fill, more) => rect(...at(x, y), l * scale, w * scale, fill, more);
      const spot = (name, x, y, value) => circle(...at(x, y), 30, value > 30 ? '#4f8fc0' : value > 20 ? '#8fb9da' : '#d6e6f1') + text(at(x, y)[0], at(x, y)[1] + 7, String(value), { textAnchor: 'middle', fontSize: 18, fontWeight: 'bold' }) + text(at(x, y)[0], at(x, y)[1] + 50, name, { textAnchor: 'middle', fontSize: 15, fill: ink.dark });
      return box(1120, 30, 870, 6, '#80868a') + box(1169, 43, 766, 740, '#f1ead8') + box(1184, 307, 736, 300, ink.water, { fillOpacity: 0.25 }) + box(1152, 40, 15, 745, ink.wood) + box(1936, 40, 15, 745, ink.wood) + box(1152, 788, 799, 15, ink.wood)
        + spot('P14', 1160, 100, 31) + spot('P15', 1160, 690, 22.6) + spot('P16', 1944, 100, 27.2) + spot('P17', 1944, 690, 16) + spot('P18', 1260, 792, 24.5) + spot('P19', 1350, 300, 36) + spot('P21', 1500, 400, 17.8)
        + callout(...at(1700, 500), 780, 200, ['6 mm of free water', 'held in the bund']) + callout(...at(1152, 60), 780, 320, ['foot of A32: 31 %,', 'swollen 3 mm']) + text(790, 450, ['Numbers: moisture in %', 'Subfloor P21 below: 17.8 %,', 'not above 18 %'], { fontSize: 20, fill: ink.dark });
    },
  },
  {
    name: 'camper-10-fridge', findings: ['F9'], shows: 'fridge A23 held by four trim screws only: it moves 9 mm at 200 N',
    draw() {
      const v = view(camper, 'side', { x: 40, y: 150, scale: 0.3, faint: ['A20', 'A21'], subject: ['A23'] });
      const [x, y, w, h] = v.box('A23');
      return v.drawn + text(x + w / 2, y + h / 2, 'A23', { textAnchor: 'middle', fontSize: 24 }) + text(x + w / 2, y + h / 2 + 30, '24 kg', { textAnchor: 'middle', fontSize: 18 }) + [[x + 4, y + 14], [x + w - 4, y + 14], [x + 4, y + h - 14], [x + w - 4, y + h - 14]].map(([a, b]) => circle(a, b, 6, ink.fault)).join('') + text(...v.at(960, 0, 960), 'A20', { fontSize: 20 })
        + callout(x + w - 4, y + 14, 720, 220, ['four trim screws, no base strap']) + callout(x + w / 2, y + h - 4, 700, 620, ['pulled at 200 N: 9 mm', 'towards the aisle']);
    },
  },
  {
    name: 'camper-11-gas-locker', findings: ['F10'], shows: 'gas locker A56: the 90 mm drop-out is half covered by the floor vinyl; the hose was made nine years ago',
    draw: () => rect(120, 160, 480, 520, '#e9e9e4') + rect(140, 180, 440, 480, '#f7f7f3') + circle(360, 400, 160, '#d3dde0') + circle(360, 400, 50, '#c3b06a') + text(360, 500, 'A57, 5 kg', { textAnchor: 'middle', fontSize: 22 }) + circle(215, 600, 46, '#2f2b27') + path('M215 554A46 46 0 0 1 215 646L169 646L169 554Z', { fill: '#b9a77f', stroke: ink.fault, strokeWidth: 3 })
      + path('M400 380C480 300 520 320 540 230', { stroke: '#d2742e', strokeWidth: 18 }) + rect(640, 470, 400, 60, '#d2742e', { rx: 30 }) + text(840, 508, '2017-03   8 mm', { textAnchor: 'middle', fontSize: 26, fill: '#fff' }) + callout(190, 600, 640, 600, ['drop-out 90 mm: half covered by vinyl,', 'gas would pool in the locker']) + callout(500, 325, 680, 220, ['hose nine years old,', 'usual limit ten']) + text(640, 570, 'print on the hose', { fontSize: 18, fill: ink.dark }),
  },
  {
    name: 'camper-12-seat-box', findings: ['F11'], shows: 'seat box A29 from the aisle: no hatch; the heater A52 behind it is shut in by the inner boards',
    draw() {
      const k = 0.98, at = (x, z) => [120 + (x - 350) * k, 715 - z * k];
      const box = (x, z, l, h, fill, more) => rect(at(x, z + h)[0], at(x, z + h)[1], l * k, h * k, fill, more);
      return box(350, 32, 800, 428, ink.wood) + box(420, 45, 340, 140, ink.subject, { strokeDasharray: '8 6', fillOpacity: 0.75 }) + text(...at(530, 105), 'A52', { fontSize: 28 }) + box(350, 462, 800, 60, ink.soft) + text(...at(700, 480), 'cushion A30', { fontSize: 20 }) + box(780, 32, 15, 413, 'none', { strokeDasharray: '6 6' })
        + box(760, 34, 390, 58, '#d9c7a8', { strokeDasharray: '8 6', fillOpacity: 0.6 }) + text(...at(880, 54), 'duct A54', { fontSize: 18 }) + circle(...at(358, 300), 9, '#2f2b27') + callout(...at(900, 200), 580, 380, ['no hatch on the aisle side']) + callout(...at(358, 300), 150, 300, ['one 1-1/4 in hole is all', 'the air the heater gets']);
    },
  },
  {
    name: 'camper-13-fuse-board', findings: ['F12'], shows: 'fuse board on plate A47: 7 of 14 fuses without a label',
    draw: () => rect(200, 160, 800, 500, '#e4e4df', { rx: 10 }) + Array.from({ length: 14 }, (_, i) => {
      const x = 240 + (i % 7) * 108, y = 210 + Math.floor(i / 7) * 220;
      const named = [0, 1, 3, 6, 7, 10, 12].includes(i);
      return rect(x, y, 62, 90, ['#c9a13b', '#5c86b8', '#b8593f', '#6fa063'][i % 4], { rx: 6 }) + rect(x - 8, y + 104, 80, 34, named ? '#fffdf7' : '#eceae3', { stroke: named ? ink.line : ink.fault, strokeDasharray: named ? 'none' : '6 4' }) + (named ? text(x + 32, y + 127, ['pump', 'fridge', '', 'heater', '', '', 'vent', 'light', '', '', 'USB', '', 'radio'][i] || 'light', { textAnchor: 'middle', fontSize: 17 }) : text(x + 32, y + 129, '?', { textAnchor: 'middle', fontSize: 22, fill: ink.fault, fontWeight: 'bold' }));
    }).join('') + callout(488, 352, 640, 676, ['seven fuses nobody can name']),
  },
  {
    name: 'camper-14-table-plate', findings: ['F13'], shows: 'leg plate of the table A31: six rusty screw heads in the vinyl, none pulled yet',
    draw: () => rect(60, 140, 700, 570, '#dcd3bd', { stroke: 'none' }) + rect(210, 220, 400, 400, '#c9ced1', { rx: 18 }) + circle(410, 420, 96, '#e7eaeb') + circle(410, 420, 78, '#b5babd') + [[250, 260], [570, 260], [250, 420], [570, 420], [250, 580], [570, 580]].map(([x, y]) => circle(x, y, 30, '#a4572b', { fillOpacity: 0.45, stroke: 'none' }) + circle(x, y, 16, '#8d5a3c') + line(x - 9, y - 9, x + 9, y + 9) + line(x - 9, y + 9, x + 9, y - 9)).join('')
      + callout(570, 260, 800, 220, ['rusty heads', 'through the vinyl']) + callout(570, 580, 800, 500, ['not pulled: whether a', 'tip goes through the', 'floor is not known'], { fault: false }),
  },
  {
    name: 'camper-15-grey-tank', findings: ['F14'], shows: 'grey tank A55 from below: its top and the pipes into it cannot be seen',
    draw() {
      const v = view(camper, 'side', { x: 60, y: 140, scale: 0.26, faint: ['A29', 'A34', 'A41', 'A45'] });
      const [x, y] = v.at(900, 0, -40);
      return v.drawn + rect(x, y, 900 * 0.26, 230 * 0.26, ink.subject) + text(x + 90, y + 42, 'A55', { fontSize: 24 }) + hatch(x, y - 10, 900 * 0.26, 10, ink.fault, 8) + path(`M${x + 20} ${y + 100}L${x + 110} ${y + 64}L${x + 200} ${y + 100}`, { strokeDasharray: '6 6' })
        + callout(x + 200, y - 4, 620, 680, ['top not visible: not inspected'], { fault: false });
    },
  },
];

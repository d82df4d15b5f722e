import { type Circle, type HipGeometry, type HipSide, type HipView, numbersFrom } from './geometry.js';
import { femur } from './femur.js';
import { spine } from './spine.js';

/** Drawn in units where a head has radius 50, x from the midline outward, y from the line through the sockets. */
const HEAD = 50;
const SOCKET = 55;
const RIM = 4.5;
const HIP_X = 150;

const frames: Record<HipView, { width: number; height: number; scale: number; top: number }> = {
  vdExtended: { width: 1000, height: 1300, scale: 0.92, top: 420 },
  vdCompression: { width: 1200, height: 1000, scale: 1.2, top: 520 },
  vdDistraction: { width: 1200, height: 1000, scale: 1.2, top: 520 },
  vdLoaded: { width: 1200, height: 1000, scale: 1.2, top: 520 },
};

/** Share of the index that shows in a view, and where the head goes; invented, for drawing only. */
const displacement: Record<HipView, { share: number; angle: number }> = {
  vdExtended: { share: 0.3, angle: 20 },
  vdCompression: { share: 0.06, angle: 0 },
  vdDistraction: { share: 1, angle: 12 },
  vdLoaded: { share: 0.8, angle: -35 },
};

export interface Pelvis {
  geometry: HipGeometry;
  soft: string;
  body: string;
}

/**
 * A pelvis seen from below.
 * @param left, right distraction index of each hip, 0 to 1.5; shown in full on the distraction view only
 * @param rotationDegrees turn about the long axis, −10 to 10; positive widens the left opening (3% a degree, invented)
 */
export function pelvis(view: HipView, left: number, right: number, rotationDegrees: number, seed: number): Pelvis {
  const random = numbersFrom(seed);
  const frame = frames[view];
  const flare = 0.94 + 0.12 * random();
  const size = 0.96 + 0.08 * random();
  const scale = frame.scale * size;
  const axis = frame.width / 2;
  const build = (sign: 1 | -1, index: number) => side(view, sign, index, rotationDegrees * sign, { axis, top: frame.top, scale, flare });
  const halves = { left: build(1, left), right: build(-1, right) };
  const half = ({ drawing, sign }: ReturnType<typeof side>, part: 'bone' | 'femur' | 'rim') =>
    `<g transform="translate(${axis} ${frame.top}) scale(${sign * scale} ${scale})">${drawing[part]}</g>`;
  const both = (part: 'bone' | 'femur' | 'rim') => half(halves.left, part) + half(halves.right, part);
  const centre = (drawing: string) => `<g transform="translate(${axis} ${frame.top}) scale(${scale})">${drawing}</g>`;
  return {
    geometry: {
      kind: 'hips',
      width: frame.width,
      height: frame.height,
      mmPerPixel: 11.5 / (HEAD * frame.scale),
      rotationDegrees,
      left: halves.left.geometry,
      right: halves.right.geometry,
    },
    soft: centre(tissue(view)),
    body: centre(spine(rotationDegrees)) + `<g filter="url(#bone)">${both('bone')}</g>` + both('femur') + both('rim') + (view === 'vdDistraction' ? centre(device) : ''),
  };
}

function side(view: HipView, sign: 1 | -1, index: number, turn: number, place: { axis: number; top: number; scale: number; flare: number }) {
  const { share, angle } = displacement[view];
  const d = index * share * HEAD;
  const head: Circle = { x: HIP_X + d * Math.cos((angle * Math.PI) / 180), y: d * Math.sin((angle * Math.PI) / 180), r: HEAD };
  const socket: Circle = { x: HIP_X, y: 0, r: SOCKET };
  const obturator = 33 * (1 + 0.03 * turn);
  const toPicture = ({ x, y, r }: Circle): Circle => ({ x: place.axis + sign * x * place.scale, y: place.top + y * place.scale, r: r * place.scale });
  const geometry: HipSide = { head: toPicture(head), socket: toPicture(socket), index: d / HEAD, obturatorWidth: 2 * obturator * place.scale };
  return { sign, geometry, drawing: { bone: hipBone(obturator, place.flare * (1 - 0.015 * turn)), femur: femur(view, head), rim: rim() } };
}

/** Wing, body, socket, ischium and pubis in one outline with the opening cut out. */
function hipBone(obturator: number, flare: number): string {
  const w = (x: number) => (118 + (x - 118) * flare).toFixed(1);
  const from = onSocket(-58);
  const to = onSocket(74);
  const outline = `M46 -236C${w(44)} -285 ${w(58)} -338 ${w(88)} -366C${w(112)} -388 ${w(150)} -384 ${w(172)} -352C${w(194)} -316 ${w(190)} -262 ${w(172)} -212C158 -172 146 -140 144 -104C143 -86 152 -70 ${from}
A${SOCKET} ${SOCKET} 0 1 0 ${to}
C160 76 146 96 143 130C142 170 158 196 172 224C184 250 170 274 144 276C112 276 82 250 58 216C44 196 22 184 4 184L4 44C30 40 66 34 84 4C92 -16 94 -50 96 -84C98 -122 92 -150 82 -176C72 -200 50 -214 46 -236Z`;
  const [x, y] = [70, 118];
  const opening = `M${x - obturator} ${y}C${x - obturator} ${y - 34} ${x - 16} ${y - 56} ${x + 6} ${y - 54}C${x + 26} ${y - 50} ${x + obturator} ${y - 24} ${x + obturator} ${y + 6}C${x + obturator} ${y + 40} ${x + 16} ${y + 58} ${x - 4} ${y + 54}C${x - 24} ${y + 48} ${x - obturator} ${y + 28} ${x - obturator} ${y}Z`;
  return `<path fill="#fff" fill-rule="evenodd" d="${outline}${opening}"/>`;
}

/** The hard line of the socket, its inner edge on the circle that a reader follows, and the upper edge crossing the head. */
function rim(): string {
  const arc = (r: number) => `M${onSocket(-58, r)}A${r} ${r} 0 1 0 ${onSocket(74, r)}`;
  const [x, y] = onSocket(-58).split(' ').map(Number) as [number, number];
  const roof = `${arc(SOCKET)}C${x - 22} ${y + 70} ${x - 14} ${y + 34} ${x} ${y}Z`;
  const edge = `M${x} ${y}C${x - 14} ${y + 34} ${x - 22} ${y + 70} ${onSocket(74)}`;
  return `<path d="${roof}" fill="#fff" fill-opacity=".13"/><g fill="none" stroke="#fff"><path d="${arc(SOCKET + RIM / 2)}" stroke-width="${RIM}" stroke-opacity=".55" stroke-linecap="round"/><path d="${edge}" stroke-width="5" stroke-opacity=".16"/></g>`;
}

function onSocket(degrees: number, r = SOCKET): string {
  const angle = (degrees * Math.PI) / 180;
  return `${(HIP_X + r * Math.cos(angle)).toFixed(2)} ${(r * Math.sin(angle)).toFixed(2)}`;
}

function tissue(view: HipView): string {
  const trunk = 'M-300 -560C-290 -420 -262 -300 -250 -200C-246 -120 -290 -60 -310 40L-300 300L300 300L310 40C290 -60 246 -120 250 -200C262 -300 290 -420 300 -560Z';
  const legs =
    view === 'vdExtended'
      ? 'M-318 0C-350 200 -330 500 -300 760L-270 1000L-110 1000L-96 700C-80 520 -40 420 0 330C40 420 80 520 96 700L110 1000L270 1000L300 760C330 500 350 200 318 0Z'
      : 'M-312 0C-400 100 -460 250 -470 460L-150 460C-130 380 -60 330 0 320C60 330 130 380 150 460L470 460C460 250 400 100 312 0Z';
  const thick = '<ellipse cx="0" cy="-40" rx="200" ry="300" fill="#fff" fill-opacity=".07"/>';
  return `<g fill="#fff" opacity=".22"><path d="${trunk}"/><path d="${legs}"/></g>${thick}`;
}

/** A plain bar between the thighs. */
const device = '<g fill="#fff"><rect x="-205" y="158" width="410" height="58" rx="29" fill-opacity=".2"/><rect x="-205" y="158" width="410" height="58" rx="29" fill="none" stroke="#fff" stroke-opacity=".34" stroke-width="4"/><path d="M-120 187L120 187" stroke="#fff" stroke-opacity=".3" stroke-width="10" stroke-linecap="round"/></g>';

import type { ElbowGeometry, ElbowView } from './geometry.js';

const WIDTH = 1000;
const HEIGHT = 1000;
const MM_PER_PIXEL = 0.16;
const CONDYLE = { x: 400, y: 610, r: 96 };

export interface Elbow {
  geometry: ElbowGeometry;
  soft: string;
  body: string;
}

/**
 * A bent elbow seen from the inner side; the right one is the mirror of the left.
 * @param spurMm size of the bone spur on the anconeal process, 0 to 8 mm
 */
export function elbow(view: ElbowView, spurMm: number): Elbow {
  const mirrored = view === 'mlFlexedRight';
  const turn = (drawing: string) => (mirrored ? `<g transform="translate(${WIDTH} 0) scale(-1 1)">${drawing}</g>` : drawing);
  return {
    geometry: {
      kind: 'elbow',
      width: WIDTH,
      height: HEIGHT,
      mmPerPixel: MM_PER_PIXEL,
      condyle: { ...CONDYLE, x: mirrored ? WIDTH - CONDYLE.x : CONDYLE.x },
      spurMm,
    },
    soft: turn(tissue),
    body: turn(`${humerus}${ulna(spurMm)}${radius}${jointLines}`),
  };
}

const tissue =
  '<g fill="#fff" fill-opacity=".22"><path d="M520 -40C440 120 330 260 220 380C130 470 110 600 200 720C280 810 420 830 560 800L1040 760L1040 430L760 400C840 300 900 140 960 -40Z"/></g><ellipse cx="420" cy="560" rx="240" ry="190" fill="#fff" fill-opacity=".06"/>';

const humerus = `<g filter="url(#shaft)"><g fill="#fff"><path d="M720 -40C640 120 560 250 480 350C430 410 350 450 316 530C296 590 306 668 350 698C410 726 486 706 500 640C508 590 514 540 540 490C590 410 700 230 830 -40Z"/><circle cx="${CONDYLE.x}" cy="${CONDYLE.y}" r="${CONDYLE.r}"/></g></g><circle cx="412" cy="600" r="80" fill="#fff" fill-opacity=".1" stroke="#fff" stroke-opacity=".3" stroke-width="4"/><ellipse cx="424" cy="490" rx="40" ry="24" transform="rotate(-50 424 490)" fill="#000" fill-opacity=".16"/>`;

const ulna = (spurMm: number) =>
  `<g filter="url(#shaft)"><g fill="#fff"><path d="M150 392C176 366 214 372 232 398C250 432 268 458 306 500C318 520 302 534 296 560C286 640 328 712 404 724C440 728 470 724 494 716C520 742 580 744 660 734L1040 690L1040 756L680 800C560 818 420 820 330 792C240 760 200 680 176 590C158 520 120 440 150 392Z"/>${spur(spurMm)}</g></g>`;

const radius =
  '<g filter="url(#shaft)"><g fill="#fff"><path d="M498 596C520 584 548 590 556 612C564 634 600 640 660 632L1040 574L1040 668L680 712C590 722 520 726 492 708C500 674 506 632 498 596Z"/></g></g>';

const jointLines = `<g fill="none" stroke="#fff" stroke-linecap="round"><path d="M300 540C284 640 330 716 404 724C440 728 470 722 490 712" stroke-width="5" stroke-opacity=".5"/><path d="M500 600C508 634 504 676 494 706" stroke-width="5" stroke-opacity=".5"/></g>`;

/** New bone on the upper edge of the anconeal process, as high as asked for. */
function spur(mm: number): string {
  if (mm === 0) return '';
  const reach = ((mm / MM_PER_PIXEL) * 4) / 3;
  const [dx, dy] = [0.81 * reach, -0.58 * reach];
  return `<path d="M246 420C${250 + dx} ${425 + dy} ${300 + dx} ${495 + dy} 304 500L280 510Z"/>`;
}

import sharp from 'sharp';
import { burntText } from './burnt-text.js';
import { elbow } from './elbow.js';
import { film } from './film.js';
import type { ElbowGeometry, HipGeometry, PhantomView } from './geometry.js';
import { pelvis } from './pelvis.js';

export interface PhantomOptions {
  view: PhantomView;
  /** Hips: distraction index of the dog's left and right, 0 to 1.5. Elbows: bone spur of that side in mm, 0 to 8. */
  left: number;
  right: number;
  seed: number;
  /** Burnt into the picture, one line each: transponder, order number. */
  label: string;
  /** Local day of the exposure, burnt in as given. */
  date: string;
  /** Turn about the dog's long axis, −10 to 10 degrees; hips only. */
  rotationDegrees?: number;
}

export interface Phantom {
  /** 8-bit greyscale PNG. */
  png: Buffer;
  /** What is true of the picture by construction. */
  geometry: HipGeometry | ElbowGeometry;
}

/**
 * A synthetic radiograph with known geometry, labelled as synthetic. The same options give the same bytes.
 * @throws RangeError when an index, spur or rotation cannot be drawn
 */
export async function drawPhantom({ view, left, right, seed, label, date, rotationDegrees = 0 }: PhantomOptions): Promise<Phantom> {
  const isElbow = view === 'mlFlexedLeft' || view === 'mlFlexedRight';
  const most = isElbow ? 8 : 1.5;
  if (![left, right].every((value) => value >= 0 && value <= most)) throw new RangeError(`left and right must lie between 0 and ${most} for ${view}`);
  if (!(Math.abs(rotationDegrees) <= 10)) throw new RangeError('rotationDegrees must lie between -10 and 10');
  const parts = isElbow ? elbow(view, view === 'mlFlexedLeft' ? left : right) : pelvis(view, left, right, rotationDegrees, seed);
  const { width, height } = parts.geometry;
  const marker = view === 'mlFlexedRight' ? 'R' : 'L';
  const lines = [...label.split('\n'), date];
  const notice = isElbow ? { x: width - 48, y: height - 100, anchor: 'end' as const } : { x: 48, y: 86, anchor: 'start' as const };
  const text = [
    burntText('SYNTHETIC', notice.x, notice.y, 38, notice.anchor),
    burntText('Drawn by the program,', notice.x, notice.y + 28, 18, notice.anchor, 200),
    burntText('not a dog', notice.x, notice.y + 52, 18, notice.anchor, 200),
    ...lines.map((line, i) => burntText(line, 48, height - 48 - 26 * (lines.length - 1 - i), 18, 'start', 200)),
    burntText(marker, width - 60, isElbow ? 130 : 250, 74, 'end', 250),
  ];
  const burnt = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${text.join('')}</svg>`;
  const anatomy = await sharp(Buffer.from(film(width, height, parts))).removeAlpha().greyscale().blur(0.9).toColourspace('b-w').raw().toBuffer({ resolveWithObject: true });
  const png = await sharp(anatomy.data, { raw: anatomy.info })
    .composite([{ input: Buffer.from(burnt) }])
    .removeAlpha()
    .greyscale()
    .toColourspace('b-w')
    .png({ compressionLevel: 6 })
    .toBuffer();
  return { png, geometry: parts.geometry };
}

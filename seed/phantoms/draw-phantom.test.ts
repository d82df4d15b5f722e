import sharp from 'sharp';
import { drawPhantom, type PhantomOptions } from './draw-phantom.js';
import type { Circle, HipGeometry } from './geometry.js';

const options: PhantomOptions = { view: 'vdDistraction', left: 0.38, right: 0.62, seed: 7, label: '999 0000 0000 0007\nAR26-00417-9', date: '2026-11-11' };

const hips = async (changed: Partial<PhantomOptions> = {}) => {
  const { png, geometry } = await drawPhantom({ ...options, ...changed });
  return { png, geometry: geometry as HipGeometry };
};

type Grey = (x: number, y: number) => number;

async function greyOf(png: Buffer): Promise<Grey> {
  const { data, info } = await sharp(png).raw().toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => data[(y * info.width + x) * info.channels]!;
  return (x, y) => {
    const [i, j] = [Math.floor(x), Math.floor(y)];
    const [u, v] = [x - i, y - j];
    return (at(i, j) * (1 - u) + at(i + 1, j) * u) * (1 - v) + (at(i, j + 1) * (1 - u) + at(i + 1, j + 1) * u) * v;
  };
}

/** Circle through the middle of the edge near the expected radius, seen from its centre towards the midline. */
function find(grey: Grey, circle: Circle, towards: number, strength: (grey: Grey, x: number, y: number, dx: number, dy: number) => number): Circle {
  const points = [];
  for (let degrees = -50; degrees <= 50; degrees += 4) {
    const angle = towards + (degrees * Math.PI) / 180;
    const [dx, dy] = [Math.cos(angle), Math.sin(angle)];
    let [weight, moment] = [0, 0];
    for (let radius = circle.r - 3; radius <= circle.r + 3; radius += 0.1) {
      const is = Math.max(0, strength(grey, circle.x + radius * dx - 0.5, circle.y + radius * dy - 0.5, dx, dy));
      weight += is;
      moment += is * radius;
    }
    const at = moment / weight;
    points.push({ x: circle.x + at * dx, y: circle.y + at * dy });
  }
  return fit(points, circle);
}

const edge = (grey: Grey, x: number, y: number, dx: number, dy: number) => grey(x - dx, y - dy) - grey(x + dx, y + dy);
const inward = (...at: Parameters<typeof edge>) => -edge(...at);

/** Kåsa's linear fit (IEEE Trans Instrum Meas 1976;25:8-14), with the origin moved to the expected centre. */
function fit(points: { x: number; y: number }[], origin: { x: number; y: number }): Circle {
  const rows = points.map((p) => [p.x - origin.x, p.y - origin.y, 1] as const);
  const m = [0, 1, 2].map((i) => [...[0, 1, 2].map((j) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)), rows.reduce((sum, row) => sum + row[i]! * (row[0] ** 2 + row[1] ** 2), 0)]);
  for (let i = 0; i < 3; i++) {
    for (let k = 0; k < 3; k++) {
      if (k === i) continue;
      const factor = m[k]![i]! / m[i]![i]!;
      m[k] = m[k]!.map((value, j) => value - factor * m[i]![j]!);
    }
  }
  const [a, b, c] = m.map((row, i) => row[3]! / row[i]!) as [number, number, number];
  return { x: origin.x + a / 2, y: origin.y + b / 2, r: Math.sqrt(c + (a * a + b * b) / 4) };
}

describe('drawPhantom', () => {
  it('gives an 8-bit greyscale PNG, the same bytes for the same options', async () => {
    const [first, second, other] = [await hips(), await hips(), await hips({ seed: 8 })];
    expect(await sharp(first.png).metadata()).toMatchObject({ format: 'png', width: 1200, height: 1000, channels: 1, depth: 'uchar' });
    expect(first.png.equals(second.png)).toBe(true);
    expect(first.png.equals(other.png)).toBe(false);
  });

  it.each([
    [0.38, 0.62],
    [0.21, 0.95],
  ])('draws the index it says: left %f, right %f', async (left, right) => {
    const { png, geometry } = await hips({ left, right });
    expect(geometry.left.index).toBeCloseTo(left, 10);
    expect(geometry.right.index).toBeCloseTo(right, 10);
    const grey = await greyOf(png);
    for (const [side, towards] of [['left', Math.PI], ['right', 0]] as const) {
      const head = find(grey, geometry[side].head, towards, edge);
      const socket = find(grey, geometry[side].socket, towards, inward);
      const measured = Math.hypot(head.x - socket.x, head.y - socket.y) / head.r;
      expect(Math.abs(measured - geometry[side].index)).toBeLessThan(0.01);
    }
  });

  it("puts the dog's left on the right of the picture", async () => {
    const { geometry } = await hips();
    expect(geometry.left.head.x).toBeGreaterThan(geometry.right.head.x);
  });

  it('shows next to nothing of the index under compression', async () => {
    const { geometry } = await hips({ view: 'vdCompression' });
    expect(Math.max(geometry.left.index, geometry.right.index)).toBeLessThan(0.05);
  });

  it('widens one opening and narrows the other when the dog lies turned', async () => {
    const { geometry } = await hips({ rotationDegrees: 4 });
    expect(geometry.left.obturatorWidth / geometry.right.obturatorWidth).toBeCloseTo(1.12 / 0.88, 10);
  });

  it('mirrors the right elbow', async () => {
    const [left, right] = await Promise.all((['mlFlexedLeft', 'mlFlexedRight'] as const).map((view) => drawPhantom({ ...options, view, left: 0, right: 3 })));
    expect(left!.geometry).toMatchObject({ kind: 'elbow', condyle: { x: 400 }, spurMm: 0 });
    expect(right!.geometry).toMatchObject({ kind: 'elbow', condyle: { x: 600 }, spurMm: 3 });
  });

  it('refuses what cannot be drawn', async () => {
    await expect(hips({ left: -0.1 })).rejects.toThrow(/between 0 and 1.5/);
    await expect(hips({ right: NaN })).rejects.toThrow(/between 0 and 1.5/);
    await expect(hips({ rotationDegrees: 45 })).rejects.toThrow(/-10 and 10/);
  });
});

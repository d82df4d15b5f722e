import type { Point } from '#libs/science/measurement/plane';

/** The part of a picture that is shown, in its pixels. */
export interface PictureView { x: number; y: number; width: number; height: number }
export interface Size { width: number; height: number }

const NEAREST = 16;

export const wholePicture = ({ width, height }: Size): PictureView => ({ x: 0, y: 0, width, height });

/** Nearer or further about a place that stays where it is; never further than the whole picture. */
export function nearer(view: PictureView, by: number, about: Point, picture: Size): PictureView {
  const width = Math.min(picture.width, Math.max(picture.width / NEAREST, view.width / by));
  const share = width / view.width;
  return inside({ x: about.x - (about.x - view.x) * share, y: about.y - (about.y - view.y) * share, width, height: view.height * share }, picture);
}

export const moved = (view: PictureView, dx: number, dy: number, picture: Size): PictureView => inside({ ...view, x: view.x + dx, y: view.y + dy }, picture);

const held = (at: number, size: number, whole: number) => Math.min(whole - size, Math.max(0, at));
const inside = (view: PictureView, picture: Size): PictureView => ({ ...view, x: held(view.x, view.width, picture.width), y: held(view.y, view.height, picture.height) });

/** Pixels of the picture for one of the screen, where the view is fitted into a box. */
export const pixelsPerDot = (view: Size, box: Size): number => Math.max(view.width / Math.max(1, box.width), view.height / Math.max(1, box.height));

export const middleOf = ({ x, y, width, height }: PictureView): Point => ({ x: x + width / 2, y: y + height / 2 });

/** The place of the picture that lies under a place of the box, from the box's corner. */
export function placeUnder(view: PictureView, box: Size, at: Point): Point {
  const dots = pixelsPerDot(view, box);
  const middle = middleOf(view);
  return { x: middle.x + (at.x - box.width / 2) * dots, y: middle.y + (at.y - box.height / 2) * dots };
}

/** The same part of another picture; two attempts may differ in size. */
export function sameOn(view: PictureView, from: Size, to: Size): PictureView {
  const [x, y] = [to.width / from.width, to.height / from.height];
  return { x: view.x * x, y: view.y * y, width: view.width * x, height: view.height * y };
}

import { useCallback, useState, type Dispatch, type SetStateAction } from 'react';
import { moved, nearer, middleOf, wholePicture, type PictureView, type Size } from './picture-view.js';
import { asItCame, toned, type Tone } from './tone.js';
import type { Point } from '#libs/science/measurement/plane';

export type Look = ReturnType<typeof useLook>;

export type ToneState = readonly [Tone, Dispatch<SetStateAction<Tone>>];

/** What part of a picture is looked at, and how bright: one state, whatever is drawn with it. A tone from outside stays when the film changes. */
export function useLook(picture: Size, kept?: ToneState) {
  const [look, setLook] = useState<{ of: string; view: PictureView }>({ of: '', view: wholePicture(picture) });
  const own = useState<Tone>(asItCame);
  const [tone, setTone] = kept ?? own;
  const { width, height } = picture;
  const of = `${width} ${height}`;
  const view = look.of === of ? look.view : wholePicture(picture);
  const setView = useCallback(
    (next: PictureView | ((view: PictureView) => PictureView)) =>
      setLook((now) => {
        const before = now.of === of ? now.view : wholePicture({ width, height });
        return { of, view: typeof next === 'function' ? next(before) : next };
      }),
    [of, width, height],
  );
  return {
    picture, view, setView, tone, setTone,
    zoom: useCallback((by: number, about?: Point) => setView((v) => nearer(v, by, about ?? middleOf(v), { width, height })), [setView, width, height]),
    pan: useCallback((dx: number, dy: number) => setView((v) => moved(v, dx, dy, { width, height })), [setView, width, height]),
    whole: useCallback(() => setView(wholePicture({ width, height })), [setView, width, height]),
    brighten: useCallback((level: number, widthBy: number) => setTone((t) => toned(t, level, widthBy)), [setTone]),
    turn: useCallback(() => setTone((t) => ({ ...t, turned: !t.turned })), [setTone]),
    asItCame: useCallback(() => (setTone(asItCame), setView(wholePicture({ width, height }))), [setTone, setView, width, height]),
  };
}

import type { ViewCode } from '../protocols/types.js';

export type MarkKind = 'head' | 'socket' | 'rim' | 'dorsalEdge' | 'foramen' | 'wing' | 'femur' | 'midline' | 'marker';

export interface KindOfMark {
  kind: MarkKind;
  /** For people: "Head, rim". */
  label: string;
  /** What to click, in order. */
  words: string;
  atLeast: number;
  atMost: number;
  /** Whether left and right are marked each. */
  sided: boolean;
}

const CIRCLE = { atLeast: 3, atMost: 24, sided: true };
const PAIR = { atLeast: 2, atMost: 2, sided: true };

const kinds: Record<MarkKind, KindOfMark> = {
  head: { kind: 'head', label: 'Head', words: 'Three or more points on the rim of the femoral head, spread as far round as it can be followed.', ...CIRCLE },
  socket: { kind: 'socket', label: 'Socket', words: 'Three or more points on the inner edge of the socket.', ...CIRCLE },
  rim: { kind: 'rim', label: 'Outer rim', words: 'The outermost point of the upper rim of the socket.', atLeast: 1, atMost: 1, sided: true },
  dorsalEdge: { kind: 'dorsalEdge', label: 'Back edge', words: 'Two points of the socket’s back edge, where it crosses the head.', ...PAIR },
  foramen: { kind: 'foramen', label: 'Opening', words: 'The opening of the pelvis at its widest: inner end, outer end.', ...PAIR },
  wing: { kind: 'wing', label: 'Wing', words: 'The wing of the pelvis at its widest: inner end, outer end.', ...PAIR },
  femur: { kind: 'femur', label: 'Thigh', words: 'The middle of the thigh bone: hip end, knee end.', ...PAIR },
  midline: { kind: 'midline', label: 'Midline', words: 'The midline of the pelvis: head end, tail end.', ...PAIR, sided: false },
  marker: { kind: 'marker', label: 'Side marker', words: 'Where the letter lies in the picture.', atLeast: 1, atMost: 1, sided: true },
};

const stressed: MarkKind[] = ['head', 'socket', 'foramen', 'wing', 'midline', 'marker'];
const ofView: Partial<Record<ViewCode, MarkKind[]>> = {
  vdExtended: ['head', 'rim', 'dorsalEdge', 'foramen', 'wing', 'femur', 'midline', 'marker'],
  vdCompression: stressed,
  vdDistraction: stressed,
  vdLoaded: stressed,
};

/** What may be marked on a view, in the order in which it is asked for; nothing on views that are not measured. */
export function kindsOfMarks(view: string): KindOfMark[] {
  return (ofView[view as ViewCode] ?? []).map((kind) => kinds[kind]);
}

import type { Circle, HipView } from './geometry.js';

/**
 * A thigh bone hung on its head, so that a shifted head takes the bone along.
 * Head, neck and shaft are one shape: the circle of the head is exact.
 */
export function femur(view: HipView, head: Circle): string {
  const circle = `<circle r="${head.r}"/>`;
  const bone = view === 'vdExtended' ? extended : `<g transform="rotate(-21)">${upright}</g>`;
  return `<g transform="translate(${head.x.toFixed(3)} ${head.y.toFixed(3)})"><g filter="url(#shaft)"><g fill="#fff">${circle}${bone}</g></g>${view === 'vdExtended' ? kneecap : ''}</g>`;
}

const extended =
  '<path d="M6 -44C30 -40 44 -30 62 -34C84 -46 112 -34 116 -4C118 24 112 48 108 84C102 180 98 300 98 420C98 540 104 610 118 668C126 706 122 752 96 764C78 770 66 752 58 744C50 752 36 770 16 762C-8 750 -8 704 2 668C20 610 34 540 38 420C40 300 42 190 44 118C40 98 24 92 26 78C30 66 26 52 10 48Z"/>' +
  '<path d="M-4 776C30 764 86 764 122 776C124 800 112 830 106 880L104 980L16 980L14 880C8 830 -8 800 -4 776Z"/>';

const kneecap = '<ellipse cx="58" cy="664" rx="25" ry="38" fill="#fff" fill-opacity=".2" stroke="#fff" stroke-opacity=".22" stroke-width="3"/>';

/** Thigh held as in standing: the bone points at the tube and looks short. */
const upright =
  '<path d="M8 -42C30 -40 44 -32 60 -38C86 -50 116 -34 118 -2C120 30 112 60 110 96C108 150 110 190 122 228C136 270 128 316 96 326C78 330 70 316 62 308C52 318 38 330 18 322C-10 308 -6 262 10 226C28 190 38 156 42 120C40 102 26 94 26 80C28 66 24 54 10 46Z"/>';

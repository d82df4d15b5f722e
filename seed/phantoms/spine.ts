/** Last lumbar vertebrae, sacrum and tail on the midline, in the pelvis's units. */
export function spine(rotationDegrees: number): string {
  const lean = rotationDegrees * 0.8;
  const lumbar = [-610, -522, -434, -346].map((y, i) => vertebra(y, 34 + i * 1.5, lean)).join('');
  const tail = Array.from({ length: 9 }, (_, i) => tailBone(-118 + i * 47, 17 - i * 1.1)).join('');
  return `<g filter="url(#bone)"><g fill="#fff">${lumbar}${sacrum}</g></g><g fill="#fff" fill-opacity=".17" stroke="#fff" stroke-opacity=".22" stroke-width="3">${tail}</g>${ridges(lean)}`;
}

/** Body with drawn-in flanks and the two transverse processes that sweep forward. */
function vertebra(y: number, half: number, lean: number): string {
  const body = `M${-half} ${y}C${-half + 9} ${y + 26} ${-half + 9} ${y + 50} ${-half} ${y + 76}L${half} ${y + 76}C${half - 9} ${y + 50} ${half - 9} ${y + 26} ${half} ${y}Z`;
  const process = (s: number) => `M${s * (half - 6)} ${y + 22}C${s * (half + 26)} ${y + 14} ${s * (half + 52 + s * lean)} ${y - 18} ${s * (half + 66 + s * lean)} ${y - 42}C${s * (half + 74)} ${y - 34} ${s * (half + 62)} ${y + 16} ${s * (half - 4)} ${y + 50}Z`;
  return `<path d="${body}"/><path d="${process(1)}"/><path d="${process(-1)}"/>`;
}

const sacrum = '<path fill-rule="evenodd" d="M-40 -262C-62 -258 -84 -238 -84 -214C-80 -186 -52 -170 -42 -140L-26 -124L26 -124L42 -140C52 -170 80 -186 84 -214C84 -238 62 -258 40 -262ZM-34 -214a7 9 0 1 0 14 0a7 9 0 1 0 -14 0ZM20 -214a7 9 0 1 0 14 0a7 9 0 1 0 -14 0ZM-28 -170a6 8 0 1 0 12 0a6 8 0 1 0 -12 0ZM16 -170a6 8 0 1 0 12 0a6 8 0 1 0 -12 0Z"/>';

function tailBone(y: number, half: number): string {
  const waist = half * 0.62;
  return `<path d="M${-half} ${y}C${-waist} ${y + 12} ${-waist} ${y + 26} ${-half * 0.9} ${y + 40}L${half * 0.9} ${y + 40}C${waist} ${y + 26} ${waist} ${y + 12} ${half} ${y}Z"/>`;
}

/** Spinous processes end on: bright drops on the midline that drift when the dog lies turned. */
function ridges(lean: number): string {
  const drops = [-592, -504, -416, -328, -244, -196].map((y) => `<path d="M${lean} ${y}C${lean + 7} ${y + 14} ${lean + 5} ${y + 34} ${lean} ${y + 40}C${lean - 5} ${y + 34} ${lean - 7} ${y + 14} ${lean} ${y}Z"/>`);
  return `<g fill="#fff" fill-opacity=".17">${drops.join('')}</g>`;
}

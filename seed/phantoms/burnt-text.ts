import { createRequire } from 'node:module';
import { type Font, openSync } from 'fontkit';

const require = createRequire(import.meta.url);
const font = openSync(require.resolve('@expo-google-fonts/noto-sans/600SemiBold/NotoSans_600SemiBold.ttf')) as Font;

/**
 * Text as outlines, so that the picture is the same on a machine without any fonts.
 * @param size height of the em in pixels
 * @param anchor which end of the text stands at x
 */
export function burntText(text: string, x: number, y: number, size: number, anchor: 'start' | 'end' = 'start', grey = 235): string {
  const scale = size / font.unitsPerEm;
  const run = font.layout(text);
  let pen = anchor === 'end' ? x - run.advanceWidth * scale : x;
  const outlines = run.glyphs.map((glyph, i) => {
    const at = pen;
    pen += run.positions[i]!.xAdvance * scale;
    return `<path transform="translate(${at.toFixed(2)} ${y}) scale(${scale.toFixed(5)} ${(-scale).toFixed(5)})" d="${glyph.path.toSVG()}"/>`;
  });
  return `<g fill="rgb(${grey},${grey},${grey})">${outlines.join('')}</g>`;
}

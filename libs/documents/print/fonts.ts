import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create } from 'fontkit';

const require = createRequire(import.meta.url);
const load = (file: string) => create(readFileSync(require.resolve(`@expo-google-fonts/${file}`)));

/** Parsed once and shared by all papers, which is most of the time of printing one; a paper embeds only the signs it uses. */
export const FONTS = {
  regular: load('noto-sans/400Regular/NotoSans_400Regular.ttf'),
  bold: load('noto-sans/600SemiBold/NotoSans_600SemiBold.ttf'),
  hebrew: load('noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf'),
  hebrewBold: load('noto-sans-hebrew/600SemiBold/NotoSansHebrew_600SemiBold.ttf'),
};

export type FontName = keyof typeof FONTS;

const HEBREW = /[\u0590-\u05ff\ufb1d-\ufb4f]/;

export function isHebrew(font: FontName): boolean {
  return font === 'hebrew' || font === 'hebrewBold';
}

/** Cuts a word where its script changes, since no single font here holds both. */
export function byFont(word: string, bold: boolean): { text: string; font: FontName }[] {
  const runs: { text: string; font: FontName }[] = [];
  for (const sign of word) {
    const hebrew = HEBREW.test(sign);
    const font: FontName = hebrew ? (bold ? 'hebrewBold' : 'hebrew') : bold ? 'bold' : 'regular';
    const last = runs.at(-1);
    if (last?.font === font) last.text += sign;
    else runs.push({ text: sign, font });
  }
  return runs;
}

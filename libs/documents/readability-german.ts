/**
 * The fourth Wiener Sachtextformel, a measure made for German: Bamberger & Vanecek, Lesen - Verstehen - Lernen - Schreiben,
 * Wien 1984; its figures read in a secondary source. It gives a school year, from the length of sentences and from the
 * words of three or more syllables in a hundred. How syllables are counted is not part of the formula.
 */
export function wienerSachtext(counts: { words: number; sentences: number; longWords: number }): number {
  return 0.2744 * ((100 * counts.longWords) / counts.words) + 0.2656 * (counts.words / counts.sentences) - 1.693;
}

/** Counts the vowel groups of German spelling; two vowels that make one sound are one group. */
export function germanSyllables(word: string): number {
  const letters = word.toLowerCase().replace(/[^a-zäöüß]/g, '').replaceAll('qu', 'q').replace(/^beur/, 'be-ur');
  return Math.max(1, letters.match(/aa|ee|oo|ie|ei|ai|eu|äu|au|[aeiouyäöü]/g)?.length ?? 0);
}

/** Blocks (paragraphs, list items) each end a sentence, full stop or not. */
export function countGerman(blocks: readonly string[]): { words: number; sentences: number; longWords: number } {
  const sentences = blocks
    .flatMap((block) => block.replaceAll('**', '').split(/(?<=[.!?:])\s+/u))
    .map((sentence) => sentence.match(/\p{L}[\p{L}-]*/gu) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  return { words: words.length, sentences: sentences.length, longWords: words.filter((word) => germanSyllables(word) >= 3).length };
}

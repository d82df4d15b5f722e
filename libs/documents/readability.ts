/**
 * Flesch-Kincaid grade: Kincaid, Fishburne, Rogers & Chissom, Research Branch Report 8-75, Naval Technical Training
 * Command, 1975. It takes words, sentences and syllables; how syllables are counted is not part of the formula.
 */
export function fleschKincaidGrade(counts: { words: number; sentences: number; syllables: number }): number {
  return (0.39 * counts.words) / counts.sentences + (11.8 * counts.syllables) / counts.words - 15.59;
}

/** A grade is a school year; pupils of grade n are about n + 5 years old (common practice, no source). */
export function readingAge(grade: number): number {
  return grade + 5;
}

/** Words that the rule below miscounts; counted by hand. */
const EXCEPTIONS: Record<string, number> = {
  area: 3, arthritis: 3, anaesthesia: 5, being: 2, centre: 2, certificate: 4, created: 3, criteria: 4, does: 1, doing: 2, giving: 2, going: 2,
  idea: 3, diet: 2, maybe: 2, quiet: 2, radiograph: 4, radius: 3, science: 2, someone: 2, something: 2, sometimes: 2,
  somewhere: 2, trial: 2, video: 3, whatever: 3, every: 2, everything: 3, breathes: 1, clothes: 1, lion: 2,
};

const SILENT_ENDING = /(?<=[^td])ed$|(?<=[^aeiouysxzcglh]|[aeiouy]l)es$|(?<=[^aeiouyl]|[aeiouy]l)e$/;
const SILENT_MIDDLE = /(?<=[aeiouy][^aeiouy]+)e(?=(?:ly|ful|less|ment|ness)$)/;

/** Counts the vowel groups of English spelling without its silent e. Digits are read out one by one. */
export function syllablesOf(word: string): number {
  const letters = word.toLowerCase().replace(/[’']s$/, '').replace(/[^a-z0-9]/g, '');
  if (/\d/.test(letters)) return [...letters].reduce((sum, sign) => sum + (sign === '7' || sign === '0' ? 2 : 1), 0);
  const known = EXCEPTIONS[letters];
  if (known) return known;
  const sounded = letters.replace(SILENT_ENDING, '').replace(SILENT_MIDDLE, '');
  return Math.max(1, sounded.match(/[aeiouy]+/g)?.length ?? 0);
}

/** Counts a text whose blocks (paragraphs, list items) each end a sentence, full stop or not. */
export function countText(blocks: readonly string[]): { words: number; sentences: number; syllables: number } {
  const sentences = blocks
    .flatMap((block) => block.replaceAll('**', '').split(/(?<=[.!?])\s+/u))
    .map((sentence) => sentence.match(/[\p{L}\p{N}][\p{L}\p{N}’'.-]*/gu) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  return {
    words: words.length,
    sentences: sentences.length,
    syllables: words.reduce((sum, word) => sum + word.split('-').reduce((part, piece) => part + syllablesOf(piece), 0), 0),
  };
}

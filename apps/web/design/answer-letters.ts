/** The keys that give the answers, in the reader's language: the first letter of each that none before it has. */
export function lettersOf(answers: readonly string[]): string[] {
  return answers.reduce<string[]>((taken, words) => [...taken, [...words.toLocaleUpperCase()].find((letter) => /\p{L}/u.test(letter) && !taken.includes(letter)) ?? ''], []);
}

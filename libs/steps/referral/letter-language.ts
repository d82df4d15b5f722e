import type { Tx } from '#libs/platform/database/db';
import { languageCodes, type Language } from '#libs/words/languages';
import { t } from '#libs/words/spoken';

/** A colleague reads the letter in the language that most of their practice has chosen; where none is known, in that of whoever sends it. */
export async function letterLanguage(tx: Tx, practice: string): Promise<Language> {
  const [row] = await tx.$queryRaw<{ code: string | null }[]>`SELECT app.practice_language(${practice}::uuid) AS code`;
  return languageCodes.find((code) => code === row?.code) ?? t.language;
}

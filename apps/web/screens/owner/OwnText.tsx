import { languages, type Language } from '#libs/words/languages';
import { useWords } from '../../words/Speak.js';

/** A text that the practice wrote: in its own language, and said to be so where that is not the reader's. */
export function OwnText({ text, language }: { text: string; language: Language }) {
  const t = useWords();
  const foreign = language !== t.language;
  return (
    <>
      {foreign && <p className="quiet small">{t('This text of the practice is written in {language}.', { language: t(languages[language].name) })}</p>}
      {text.split(/\n{2,}/).map((paragraph) => (
        <p key={paragraph} className="written" lang={foreign ? language : undefined} dir="auto">{paragraph}</p>
      ))}
    </>
  );
}

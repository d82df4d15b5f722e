import type { OwnerPage } from '#libs/contracts/screens/owner';
import { languageCodes, languages } from '#libs/words/languages';
import { ErrorBar } from '../../design/Notice.js';
import { useWords } from '../../words/Speak.js';
import { useTellLanguage } from './queries.js';

/** Each language by its own name, so that somebody who reads no other finds it. */
export function LanguageChoice({ page }: { page: OwnerPage }) {
  const t = useWords();
  const tell = useTellLanguage();
  return (
    <nav className="languages" aria-label={t('Language of this page')}>
      {languageCodes.map((code) => (
        <button key={code} type="button" lang={code} aria-pressed={code === page.language} onClick={() => code !== page.language && tell.mutate({ language: code })}>
          {languages[code].name}
        </button>
      ))}
      <ErrorBar error={tell.error} />
    </nav>
  );
}

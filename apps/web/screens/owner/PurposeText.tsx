import { useWords } from '../../words/Speak.js';
import { OwnText } from './OwnText.js';
import type { AskedPurpose } from './consent-purposes.js';
import { cannotBeUndone } from './undone.js';

/** The words that are agreed to, in full, with their version: nothing is signed that was not shown. */
export function PurposeText({ asked }: { asked: AskedPurpose }) {
  const t = useWords();
  return (
    <>
      <OwnText text={asked.text} language={asked.language} />
      <p className="why">{t(cannotBeUndone[asked.purpose])}</p>
      <p className="quiet small">{t('Version of this text: {version}', { version: asked.version })}</p>
    </>
  );
}

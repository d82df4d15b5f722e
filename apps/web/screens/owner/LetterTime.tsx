import type { OwnerPage } from '#libs/contracts/screens/owner';
import { ErrorBar } from '../../design/Notice.js';
import { RadioChoice } from '../../design/RadioChoice.js';
import { useWords } from '../../words/Speak.js';
import { useTellLetterTime } from './queries.js';

/** When a letter may come: while somebody can be asked about it, unless the owner would rather have it at once. */
export function LetterTime({ page }: { page: OwnerPage }) {
  const t = useWords();
  const tell = useTellLetterTime();
  const { letters, practice } = page;
  if (letters.reachable === null) return null;
  const value = letters.anyTime ? 'any' : 'reachable';
  return (
    <section aria-labelledby="letters">
      <h2 id="letters">{t('When letters come')}</h2>
      <RadioChoice
        label={t('Letters about pictures come {when}, so that you reach somebody of {practice} with your questions.', { when: letters.reachable, practice: practice.name })}
        options={[
          { id: 'reachable', name: t('That is good') },
          { id: 'any', name: t('Send them at once, at any time') },
        ]}
        value={value}
        onChange={(wish) => wish && wish !== value && tell.mutate({ anyTime: wish === 'any' })}
      />
      <ErrorBar error={tell.error} />
    </section>
  );
}

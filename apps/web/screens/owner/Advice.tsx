import type { OwnerPage } from '#libs/contracts/screens/owner';
import { longDay } from '../../design/format.js';
import { useWords } from '../../words/Speak.js';
import { OwnText } from './OwnText.js';

export function Advice({ page }: { page: OwnerPage }) {
  const t = useWords();
  const { visit, practice } = page;
  if (!visit || page.knots.some((k) => k.state !== 'toCome')) return null;
  return (
    <section aria-labelledby="before">
      <h2 id="before">{t('Before you come')}</h2>
      <p>
        <b>{longDay(visit.day, t.language)}, {visit.start}</b>
        <br />
        {practice.name}, {practice.address}
      </p>
      {visit.advice && (
        <>
          <h3 lang={visit.advice.language}>{visit.advice.title}</h3>
          <OwnText text={visit.advice.body} language={visit.advice.language} />
          <p className="quiet small">{t('Approved by {name}, vet. If the vet told you something else, do what the vet said.', { name: visit.advice.approvedBy })}</p>
        </>
      )}
    </section>
  );
}

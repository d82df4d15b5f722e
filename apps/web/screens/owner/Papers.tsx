import type { OwnerPage } from '#libs/contracts/screens/owner';
import { dayAt, fullDay } from '../../design/format.js';
import { useWords } from '../../words/Speak.js';

export function Papers({ page }: { page: OwnerPage }) {
  const t = useWords();
  if (page.documents.length === 0) return null;
  return (
    <section aria-labelledby="papers">
      <h2 id="papers">{t('Your papers')}</h2>
      <ul className="papers">
        {page.documents.map((paper) => (
          <li key={paper.id}>
            <a href={`/api/owner/documents/${paper.id}`} target="_blank" rel="noreferrer">
              <b>{paper.name}</b> <span className="label">{fullDay(dayAt(paper.at, page.practice.zone), t.language)}, PDF</span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

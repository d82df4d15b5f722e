import type { OwnerPage } from '#libs/contracts/screens/owner';
import { Standing } from '../../design/Standing.js';
import { fullDay } from '../../design/format.js';
import { pronouns } from './pronouns.js';
import { useWords } from '../../words/Speak.js';
import { Told } from '../../words/Told.js';
import { SecondReading } from './SecondReading.js';

export function Results({ page }: { page: OwnerPage }) {
  const t = useWords();
  if (page.results.length === 0) return null;
  return (
    <section aria-labelledby="found">
      <h2 id="found">{t('What was found')}</h2>
      {page.results.map((result) => (
        <div className="finding" key={result.study}>
          <h3>{result.study}</h3>
          <p className="quiet">{t('Read on {day}', { day: fullDay(result.readOn, t.language) })}</p>
          <ul>
            {result.words.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
          <p>
            <Told text={t('For {dog} as a whole: **{result}**', { dog: page.dog.name, result: result.dog })} />
          </p>
          {result.standing && (
            <>
              <h3 className="among">{t('Among other dogs of the breed')}</h3>
              <Standing standing={result.standing} />
            </>
          )}
          {result.appeal && <SecondReading appeal={result.appeal} practice={page.practice} />}
        </div>
      ))}
      <p className="why">
        <Told text={t('**It does not tell** whether {he} will have pain, be lame or get arthritis later, nor what {his} pups will have. A second look might come out a little different; the letter says by how much. Is {name} stiff, lame or in pain? See your vet, whatever the pictures say.', pronouns(page.dog))} />
      </p>
    </section>
  );
}

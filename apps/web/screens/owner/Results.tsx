import type { OwnerPage } from '#libs/contracts/screens/owner';
import { fullDay } from '../../design/format.js';
import { pronouns } from './pronouns.js';
import { SecondReading } from './SecondReading.js';

export function Results({ page }: { page: OwnerPage }) {
  if (page.results.length === 0) return null;
  const { she, hers } = pronouns(page.dog.sex);
  return (
    <section aria-labelledby="found">
      <h2 id="found">What was found</h2>
      {page.results.map((result) => (
        <div className="finding" key={result.study}>
          <h3>{result.study}</h3>
          <p className="quiet">Read on {fullDay(result.readOn)}</p>
          <ul>
            {result.words.map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
          <p>
            For {page.dog.name} as a whole: <b>{result.dog}</b>
          </p>
          {result.appeal && <SecondReading appeal={result.appeal} practice={page.practice} />}
        </div>
      ))}
      <p className="why">
        <b>It does not tell</b> whether {she} will have pain, be lame or get arthritis later, nor what {hers} pups will have. A second look might come out a little different; the letter says by how much. Is {page.dog.name} stiff, lame or in pain? See your vet, whatever the pictures say.
      </p>
    </section>
  );
}

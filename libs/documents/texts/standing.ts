import { unsentOfTwenty } from '#libs/contracts/line-of-twenty';
import type { Place, Standing, StandingView } from '#libs/contracts/standing';
import { wordsIn, type Sentence, type Words } from '#libs/words/words';
import type { DogWords } from '../dog-words.js';
import { dayWords } from '../words.js';

/** A standing in the owner's words: what papers, pages and tables say is written here and nowhere else. */
export function standingWords(standing: Standing, dog: DogWords, t: Words = wordsIn('en')): StandingView {
  if (standing.kind === 'none') return { line: null, lead: t(WHY_NONE[standing.why], { ...dog, region: standing.region, n: standing.n ?? t('a few') }), small: [] };
  const about = { ...dog, ...ends(standing, t), places: placeWords(standing, t) };
  return {
    line: { from: standing.from, to: standing.to, unsent: unsentShown(standing), low: about.low, high: about.high, described: described(standing, about, t) },
    lead: t('Picture twenty dogs of {his} breed in a row, from the {low} {of} to the {high}. {name} may stand at any of the filled places, **{places}**. Nobody can say at which one.', about),
    small: [
      [madeOf(standing, t), ...(standing.warning ? [t('These are fewer than 120 dogs. So the places may still change a lot.')] : []), sentBy(standing, t), unsentWords(standing, t)].join(' '),
      `${halves(standing, dog, t)} ${t('A place in the row is not a verdict. It tells no more than the reading does.')}`,
    ],
  };
}

/** "7 to 13 of every 20" */
export const placeWords = ({ from, to }: Pick<Place, 'from' | 'to'>, t: Words = wordsIn('en')): string => (from === to ? t('{from} of every 20', { from }) : t('{from} to {to} of every 20', { from, to }));

const ends = ({ ends: { low, high, of } }: Place, t: Words) => ({ low: t.known(low), high: t.known(high), of: t.known(of) });

function madeOf({ n, breed, age, fromYear, toYear, frozenOn }: Place, t: Words): string {
  const years = fromYear === toYear ? t('in {year}', { year: fromYear }) : t('from {from} to {to}', { from: fromYear, to: toYear });
  return t('The row is made of {n, number} dogs of the breed {breed}, X-rayed {age}, {years}. They were counted on {day}, and the row has not been changed since.', { n, breed, age: t.known(age), years, day: dayWords(frozenOn, t.language) });
}

function sentBy({ senders }: Place, t: Words): string {
  if (!senders) return t('Some were X-rayed with their whole litter, and for some a person chose to send the films. One of the two groups is too small to give numbers.');
  if (senders.litter === 0) return t('For each of them a person chose to send the films. So they may not stand for the whole breed.');
  if (senders.chosen === 0) return t('All of them were X-rayed with their whole litter.');
  return t('{litter} of them were X-rayed with their whole litter. For the other {chosen} a person chose to send the films.', { litter: senders.litter, chosen: senders.chosen });
}

/** Fewer than five are not drawn: one more or less could be told. */
const FEWEST = 5;
const unsentShown = ({ unsent, n }: Place): number => (unsent < FEWEST ? 0 : unsentOfTwenty(unsent, n));

function unsentWords(place: Place, t: Words): string {
  const dashed = unsentShown(place);
  const nobody = t('Nobody knows where those would stand.');
  if (place.unsent < FEWEST) return t('Fewer than 5 more dogs were X-rayed and not sent.');
  if (dashed === 0) return `${t('Some more dogs were X-rayed and not sent, fewer than one for every 20.')} ${nobody}`;
  return `${t('For every 20, about {n, plural, one {# more dog was} other {# more dogs were}} X-rayed and not sent.', { n: dashed })} ${nobody}`;
}

const halves = ({ halvesOneIn, ends, source }: Place, { name }: DogWords, t: Words): string =>
  t('If all dogs were looked at again, about one in {n} would change from the {low} half to the {high} half, or back ({source}). So may {name}, if near the middle.', {
    n: halvesOneIn, low: t.known(comparative(ends.low)), high: t.known(comparative(ends.high)), source, name,
  });

const comparative = (end: string): string => end.replace(/est$/, 'er');

function described(place: Place, about: Record<string, string>, t: Words): string {
  const dashed = unsentShown(place);
  const row = t('Twenty dogs of the breed in a row, from the {low} {of} on the left to the {high} on the right. {name} may stand at any of places {places}; these are filled.', about);
  return dashed === 0 ? row : `${row} ${t('Beside them {n, plural, one {# dashed dog} other {# dashed dogs}}: X-rayed and not sent.', { n: dashed })}`;
}

const WHY_NONE: Record<Extract<Standing, { kind: 'none' }>['why'], Sentence> = {
  noValue: 'Not every {region} could be read. So {name} is not set beside other dogs.',
  arthrosis: 'Signs of arthritis were seen. The number stays, and {name} is not set beside other dogs.',
  operated: 'A joint was operated on before. So {name} is not set beside other dogs.',
  viewsMissing: 'Not all of the pictures were there. So {name} is not set beside other dogs.',
  notMeasured: 'Nobody has shown yet how far two readings of this kind differ. A place among other dogs would look surer than it is. So we give none.',
  noConsent: 'You have not said yes to the breed’s figures. So {name} is not set beside other dogs of the breed.',
  noSet: 'The dogs of {his} breed and age have not been counted yet, or there are fewer than five. So there is no row of dogs to show.',
  tooFew: 'Only {n} dogs of {his} breed and age had been read when they were last counted. A picture of so few would mislead. It is drawn from twenty dogs on.',
};

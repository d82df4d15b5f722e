import { letterParts } from './letter-parts.js';
import { renderLetter } from './letter.js';
import { readPdf } from '#test/support/read-pdf';
import { noStanding } from '#libs/contracts/standing';
import { amendedLetter, correctionLetter, fewLetter, longLetter, placedLetter, rejectedLetter, resultLetter } from './samples.js';
import type { LetterSnapshot } from './snapshots.js';

const textOf = async (letter: LetterSnapshot) => (await readPdf(await renderLetter(letter))).text;

/** Places of the phrases in the text; a phrase that is missing makes the test fail by name. */
function inOrder(text: string, phrases: string[]): void {
  let from = 0;
  for (const phrase of phrases) {
    const at = text.indexOf(phrase, from);
    if (at < 0) throw new Error(`"${phrase}" is missing, or stands too early, in: ${text}`);
    from = at + phrase.length;
  }
}

describe('the letter with a result', () => {
  it('speaks of everything, in its order', async () => {
    inOrder(await textOf(resultLetter), [
      'Ilse Morwen', 'Brannoch’s hips',
      'Which dog', 'Brannoch of the Long Reach', '999 000 001 407 308', 'at 13 months',
      'What was done', 'reader 14',
      'What was found', 'Left hip', '0.38', 'Right hip', '0.44', 'the looser hip speaks for the dog', 'Signs of arthritis were seen.',
      'What could not be', 'The right elbow lay turned',
      'How sure this is', '0.31 to 0.45', '0.37 to 0.51',
      'cannot tell', 'pain or will be lame', 'arthritis later', 'pups',
      'What matters too', 'weighs', 'grew', 'plays', 'parents',
      'For breeding', 'one fact among many', 'ask us',
      'What to do next', 'nothing now',
      'When to see a vet', 'limps',
      'After the sleep', 'small risk',
      'If you disagree', '24 January 2027', '58.00 marks',
      'Who sees this', 'You said yes on 9 November 2026',
      'How to check this', 'weirside.example/check', '7QK2-M9XD-VT4F',
      'Questions', 'Ruan Tiedt', '0470 21 00',
    ]);
  });

  it('says in words why a joint has no value, and that no figure is published where there is none', async () => {
    const text = await textOf(longLetter);
    expect(text).toContain('not readable: the hips were turned');
    expect(text).toContain('Hips, extended view: No published figure for this protocol says');
    expect(text).toContain('the picture “craniocaudal, right” was not taken. Brannoch was waking up.');
  });

  it('keeps the readings of several studies apart', async () => {
    const text = await textOf(longLetter);
    inOrder(text.slice(text.indexOf('What was found')), ['Hips, laxity', '0.38', 'Hips, extended view', 'grade B', 'Norberg angle 103°', 'Elbows', 'grade 1']);
  });

  it('speaks of caution before any later sleep medicine where none was given', async () => {
    const text = await textOf({ ...resultLetter, visit: { ...resultLetter.visit, rest: 'none' } });
    expect(text).toContain('had no sleep medicine');
    expect(text).not.toContain('sheet you took home');
  });

  it('numbers its pages', async () => {
    const { pages } = await readPdf(await renderLetter(resultLetter));
    expect(pages).toHaveLength(2);
    pages.forEach((page, at) => expect(page).toContain(`page ${at + 1} of 2`));
  });

  it('gives every part words, for the mail too', () => {
    for (const letter of [resultLetter, amendedLetter, correctionLetter, rejectedLetter, longLetter]) {
      for (const { blocks } of letterParts(letter)) expect(blocks.length).toBeGreaterThan(0);
    }
  });
});

describe('the other letters', () => {
  it('an amended one names the letter it replaces and why, first of all', async () => {
    inOrder(await textOf(amendedLetter), ['Why a new letter', 'replaces the one of 24 November 2026', 'looked again at the right hip', '4HT8-QZ2N-K7WD', 'Which dog']);
  });

  it('a correction says what was wrong and what holds, and reports no reading', async () => {
    const text = await textOf(correctionLetter);
    inOrder(text, ['What was wrong', 'was wrong', 'does not belong to Brannoch', 'has no result yet']);
    expect(text).not.toContain('What was found');
  });

  it('one about rejected films blames nobody and reports no reading', async () => {
    const text = await textOf(rejectedLetter);
    inOrder(text, ['What happened', 'the hips were turned; one knee is outside', 'nobody’s fault', 'What to do next', 'You pay nothing', 'You may say no']);
    expect(text).not.toContain('What was found');
  });
});

describe('the place among the breed', () => {
  it('is told in numbers and words beside the picture, with who and when, and what it does not tell', async () => {
    inOrder(await textOf(placedLetter), [
      'How sure this is', 'Among other dogs', 'from the tightest hips to the loosest', '7 to 13 of every 20', 'tightest', 'loosest', 'X-rayed, not sent',
      '612 dogs of the breed Aldra Water Hound', 'from 2019 to 2025', 'counted on 1 January 2026', '41 of them were X-rayed with their whole litter', 'about 2 more dogs were X-rayed and not sent',
      'about one in 9 would change', 'not a verdict', 'What the reading', 'cannot tell',
    ]);
  });

  it('is one picture with its own words to a screen reader', async () => {
    const { figures } = await readPdf(await renderLetter(placedLetter));
    expect(figures).toEqual([expect.stringContaining('Brannoch may stand at any of places 7 to 13 of every 20; these are filled. Beside them 2 dashed dogs')]);
  });

  it('warns below 120 dogs, and tells neither who sent nor how many stayed at home where that would be fewer than five', async () => {
    const text = await textOf(fewLetter);
    inOrder(text, ['4 of every 20', '44 dogs', 'fewer than 120 dogs', 'too small to give numbers', 'Fewer than 5 more dogs']);
    expect(text).not.toContain('X-rayed, not sent');
  });

  it.each(noStanding)('says in words why there is none: %s', async (why) => {
    const text = await textOf({ ...resultLetter, studies: [{ ...resultLetter.studies[0]!, standing: { kind: 'none', why, region: 'hip', n: 13 } }] });
    expect(text).toContain('Among other dogs');
    expect(text).not.toContain('of every 20');
  });

  it('names a source in short and in plain words', async () => {
    const text = await textOf(resultLetter);
    expect(text).toContain('from a study in which dogs were X-rayed more than once');
    expect(text).not.toContain('Where this comes from');
  });
});

import { renderConsentCopy } from './consent-copy.js';
import { renderDaySheet } from './day-sheet.js';
import { dosesIn } from './doses.js';
import { renderGoingHome } from './going-home.js';
import { readPdf } from '#test/support/read-pdf';
import { consentCopy, daySheet, goingHome } from './samples.js';

describe('the going-home sheet', () => {
  it('says what is normal, what to do, when to call, and the number now, on one page', async () => {
    const { pages, text } = await readPdf(await renderGoingHome(goingHome));
    expect(pages).toHaveLength(1);
    const places = ['Tolle goes home', '08:54 to 09:40', 'Normal tonight', 'What to do', 'Call at once if Tolle', '0470 21 00', 'approved by Ruan Tiedt', 'Lio Sand', 'Anselm Rook'].map((phrase) => text.indexOf(phrase));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places).not.toContain(-1);
  });

  it('takes a smaller size for a long text and refuses one that no size fits', async () => {
    const long = (times: number) => ({ ...goingHome, text: { ...goingHome.text, normal: 'Sleepy and quiet, and a little wobbly on the legs. '.repeat(times) } });
    expect((await readPdf(await renderGoingHome(long(20)))).pages).toHaveLength(1);
    await expect(renderGoingHome(long(400))).rejects.toThrow('does not fit one page');
  });

  it('is refused when its text names a dose', async () => {
    const text = { ...goingHome.text, whatToDo: 'Give 2 tablets tonight.' };
    await expect(renderGoingHome({ ...goingHome, text })).rejects.toThrow('names a dose (2 tablets)');
  });

  it.each(['5 mg', '0.3 ml/kg', '12,5 µg', 'two tablets', 'half a tablet', '3 drops'])('knows %s as a dose', (dose) => {
    expect(dosesIn(`Give ${dose} tonight.`)).toHaveLength(1);
  });

  it('does not take times, phone numbers or a warning for a dose', () => {
    expect(dosesIn('No tablets of your own. Call 0470 21 00 after 20:00. One small meal.')).toEqual([]);
  });
});

describe('the day sheet', () => {
  it('has a row for each visit and says in words which steps are done and where it holds', async () => {
    const { text, tags } = await readPdf(await renderDaySheet(daySheet));
    for (const { time, dog } of daySheet.visits) expect(text).toMatch(new RegExp(`${time}\\s*${dog.callName.slice(0, 10)}`));
    expect(text).toContain('Consent missing. Owner signs, before 11:15');
    expect(tags.filter((tag) => tag === 'TR')).toHaveLength(daySheet.visits.length + 1);
    const raw = (await renderDaySheet(daySheet)).toString('latin1');
    expect(raw).toContain('Done: booked. On hold at: consent. To come: admitted, sedated, imaged, recovered and home.');
  });

  it('goes on to further pages with its heading, and says when nobody comes', async () => {
    const visits = Array.from({ length: 40 }, () => daySheet.visits[0]!);
    const { pages } = await readPdf(await renderDaySheet({ ...daySheet, visits }));
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(page).toContain('Waits for');
    expect((await readPdf(await renderDaySheet({ ...daySheet, visits: [] }))).text).toContain('Nobody is booked for this day.');
  });
});

describe('the consent copy', () => {
  it('gives each purpose its own answer, text version and what cannot be undone, and who signed when', async () => {
    const { text, tags } = await readPdf(await renderConsentCopy(consentCopy));
    for (const { title, textVersion, cannotBeUndone } of consentCopy.purposes) {
      expect(text).toContain(title);
      expect(text).toContain(`Text version ${textVersion}`);
      expect(text).toContain(cannotBeUndone);
    }
    expect(text).toMatch(/Sedation ?yes .*Sending every film taken ?yes .*statistics ?no /);
    expect(text).toContain('Ilse Morwen, owner. Signed 9 November 2026, 14:12 (UTC+01:00)');
    expect(tags).toContain('Figure');
  });

  it('prints a withdrawal, and leaves no box for a signature that was not drawn', async () => {
    const purposes = consentCopy.purposes.map((purpose, at) => (at === 1 ? { ...purpose, withdrawnAt: '2026-11-10T09:00:00+01:00' } : purpose));
    const signature = { ...consentCopy.signature, drawn: { width: 0, height: 0, strokes: [] } };
    const { text, tags } = await readPdf(await renderConsentCopy({ ...consentCopy, purposes, signature }));
    expect(text).toContain('Taken back: 10 November 2026, 09:00 (UTC+01:00)');
    expect(tags).not.toContain('Figure');
  });
});

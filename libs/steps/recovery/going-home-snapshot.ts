import { GOING_HOME_TEMPLATE_VERSION, type GoingHomeSnapshot } from '#libs/documents/snapshots';
import { StepError } from '../record/step-error.js';
import type { Work } from '../record/work.js';
import { dogOnPaper, moment, practiceOnPaper, reach, today } from '../report/on-paper.js';

/** The practice's own approved words, in the three parts that its text has; never a dose. */
export async function goingHomeSnapshot(work: Work, visit: string, explainedTo: string): Promise<GoingHomeSnapshot> {
  const { tx, order, actor } = work;
  const text = await tx.approvedText.findFirst({ where: { practiceId: actor.practice, kind: 'goingHome' }, orderBy: { approvedAt: 'desc' } });
  if (!text) throw new StepError('HELD', 'Your practice has no approved going-home text yet. A vet adds it under Practice, Texts.');
  const vet = await tx.staff.findUnique({ where: { id: text.approvedBy }, select: { name: true } });
  const from = work.facts('sedationStarted').find((f) => f.visit === visit);
  const recovered = work.facts('recoverySigned').find((f) => f.visit === visit);
  const ended = work.facts('imagingEnded').find((f) => f.visit === visit);
  const parts = splitText(text.body);
  const { phone } = reach(work);
  return {
    templateVersion: GOING_HOME_TEMPLATE_VERSION,
    paper: 'A4',
    lang: 'en',
    issuedAt: moment(work),
    practice: practiceOnPaper({ ...work, order: { ...order, practice: actor.practice } }),
    dog: await dogOnPaper(work),
    date: today(work),
    sleep: {
      rest: 'sedation',
      from: moment(work, from?.at ?? work.now),
      until: moment(work, recovered?.at ?? work.now),
      reversed: work.facts('drugRecorded').some((f) => f.visit === visit && f.event === 'reversal'),
      recoveredAt: moment(work, recovered?.at ?? work.now),
    },
    pictures: ended?.how === 'done' || !ended ? 'The pictures are done.' : 'Not all pictures were taken. We stopped, because that was better for the dog. We will call you.',
    text: { ...parts, version: text.version, approvedBy: { name: vet?.name ?? 'a vet of the practice', role: 'vet' }, approvedOn: text.approvedAt.toISOString().slice(0, 10) },
    call: { phone, when: 'now and all night' },
    resultWhen: 'What the pictures show comes by letter. It mostly takes a few weeks.',
    explainedBy: { name: actor.name, role: actor.roles.includes('vet') ? 'vet' : 'nurse' },
    explainedTo: { name: explainedTo, role: 'collects the dog' },
    explainedAt: moment(work),
  };
}

const HEADINGS = [['normal', /^#+\s*normal/im], ['whatToDo', /^#+\s*what to do/im], ['callAtOnce', /^#+\s*call/im]] as const;

/** The text is written as one, with a heading for each part; what stands before the first heading is what is normal. */
export function splitText(body: string): { normal: string; whatToDo: string; callAtOnce: string } {
  const starts = HEADINGS.map(([name, heading]) => ({ name, at: body.search(heading) })).filter((h) => h.at >= 0).sort((a, b) => a.at - b.at);
  const parts: Record<string, string> = { normal: starts.length === 0 ? body.trim() : body.slice(0, starts[0]!.at).trim(), whatToDo: '', callAtOnce: '' };
  starts.forEach((h, i) => {
    const text = body.slice(h.at, starts[i + 1]?.at).replace(/^[^\n]*\n?/, '').trim();
    parts[h.name] = [parts[h.name], text].filter(Boolean).join('\n\n');
  });
  return { normal: parts.normal!, whatToDo: parts.whatToDo!, callAtOnce: parts.callAtOnce! };
}

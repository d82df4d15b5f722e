import type { Road, ThreadScreen } from '#libs/contracts/screens/order';
import type { Hold } from '#libs/pathway/evaluation';
import { thread } from '#libs/pathway/thread';
import type { ThreadLine } from '#libs/pathway/thread-line';
import { holdWords, type Naming } from '#libs/pathway/words';
import { t } from '#libs/words/spoken';
import { stepName, studyName } from '#libs/register/spoken-names';
import { shortDay } from '../record/day-words.js';
import type { Work } from '../record/work.js';

const KNOTS: Record<string, string> = {
  booked: 'Booked', consent: 'Consent', admitted: 'Admitted', sedated: 'Sedated', imaged: 'Imaged', recovered: 'Recovered', goneHome: 'Gone home',
  checked: 'Checked', sent: 'Sent', received: 'Received', read: 'Read', accepted: 'Accepted', reported: 'Reported',
};
const ENDS = new Set(['cancelled', 'missed', 'turnedAway', 'died', 'ended']);

/** The thread with its words, ready to be drawn. */
export function threadScreen(work: Pick<Work, 'order' | 'evaluation' | 'facts'>, naming: Naming): ThreadScreen {
  const drawn = thread(work.order.facts, work.evaluation, work.order.rules, t);
  return {
    visits: drawn.visits.map((line) => {
      const standing = work.evaluation.visits[line.id]!;
      const where = standing.where ? work.order.practices[standing.where]?.name : undefined;
      return road(line, { label: t('Visit'), sub: [standing.day ? shortDay(standing.day) : 'no day yet', where].filter(Boolean).join(', '), step: standing.step, why: standing.why, from: null, dashed: false }, naming);
    }),
    studies: drawn.studies.map((line) => {
      const standing = work.evaluation.studies[line.id]!;
      const sub = [t('protocol {version}', { version: standing.version }), work.order.centres[standing.centre]?.name].filter(Boolean).join(', ');
      return road(line, { label: studyName(standing), sub, step: standing.step, why: standing.why, from: line.fromVisit, dashed: line.imagedNotSent }, naming);
    }),
  };
}

interface Around { label: string; sub: string; step: string; why: string | undefined; from: string | null; dashed: boolean }

function road(line: ThreadLine, around: Around, naming: Naming): Road {
  const { label, sub, from, dashed, step, why } = around;
  return {
    id: line.id, label, sub, from, dashed,
    knots: line.knots.map((k) => ({ step: k.name, name: t.known(KNOTS[k.name] ?? k.name), state: k.state, at: k.at ?? null, note: k.note ?? null, retakes: k.name === 'imaged' ? line.retakes : 0 })),
    hold: line.hold ? titleAndRest(line.hold, naming) : null,
    over: line.over,
    ended: ENDS.has(step) ? [stepName(step), why ? t.known(endWords[why] ?? why) : ''].filter(Boolean).join(': ') : null,
    sentence: line.sentence,
  };
}

const endWords: Record<string, string> = {
  unwell: 'not well on the day', identity: 'identity not settled', unfit: 'not fit for sedation', ownerDecided: 'the owner decided', emergency: 'an emergency',
  notRepeated: 'not repeated', centreClosed: 'the centre closed', notPossible: 'not possible', withdrawn: 'consent withdrawn', withdrawnAfterSending: 'consent withdrawn after sending', dogDied: 'the dog died', cancelled: 'cancelled',
};

export function titleAndRest(hold: Hold, naming: Naming): { title: string; rest: string } {
  const { title, rest } = holdWords(hold, { ...naming, t });
  return { title, rest };
}

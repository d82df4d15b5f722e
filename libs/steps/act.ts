import { actionInputs, type ActionName, type ActionRequest } from '#libs/contracts/actions/all';
import { actions, type Action } from '#libs/pathway/actions';
import { decide } from '#libs/pathway/decide';
import { factKinds } from '#libs/pathway/fact-kinds';
import type { FactType, Role } from '#libs/pathway/facts';
import type { Hold } from '#libs/pathway/evaluation';
import { holdSentence } from '#libs/pathway/words';
import { t } from '#libs/words/spoken';
import { writesOwnersWord } from './consent/owners-word.js';
import type { Actor } from './record/actor.js';
import { append } from './record/append.js';
import { lockOrder } from './record/order-record.js';
import type { StepDeps } from './record/step-deps.js';
import { notFound, StepError } from './record/step-error.js';
import { refuseElsewhere } from './record/where-done.js';
import { workOn, type Stated, type Work } from './record/work.js';
import { useCases } from './use-cases.js';

type AnyUseCase = (work: Work, on: string, input: unknown) => Stated[] | Promise<Stated[]>;

/**
 * The one way in which a person changes an order: locked, judged by the pathway, stated by its use case,
 * appended and read anew, in one transaction. `then` sees the order as it is afterwards, in the same transaction,
 * and whether the request had been done before.
 */
export async function act<T>(deps: StepDeps, actor: Actor, order: string, action: ActionName, request: ActionRequest, then: (work: Work, again: boolean) => Promise<T>): Promise<T> {
  const input = parse(action, request.input);
  return deps.db.practice(actor.practice, async (tx) => {
    const record = await lockOrder(tx, order);
    if (!record) throw notFound();
    const work = workOn(tx, deps.clock.now(), actor, record, deps.publicUrl);
    // A request that came twice, because its first answer got lost, is answered and not done again.
    if (record.facts.some((f) => f.id === request.key)) return then(work, true);
    const role = permit(work, action, request, input);
    const stated = await (useCases[action] as AnyUseCase)(work, request.on, input);
    await append(work, stated, { key: request.key, role, action, ...(request.at ? { at: request.at } : {}) });
    return then(work, false);
  });
}

function parse(action: ActionName, input: unknown): unknown {
  const parsed = actionInputs[action].safeParse(input);
  if (parsed.success) return parsed.data;
  const fields = parsed.error.issues.map((issue) => ({ path: issue.path.join('.'), message: issue.message }));
  throw new StepError('BAD_INPUT', undefined, { fields });
}

/** The role in which this person may do it now; else the reasons, in words. */
function permit(work: Work, action: ActionName, request: ActionRequest, input: unknown): Role {
  refuseElsewhere(work, action);
  const kind = factKinds[actions[action as Action].writes].kind;
  const roles = rolesFor(work.actor, action, input);
  const answers = roles.map((role) => ({ role, answer: decide(work.evaluation, action as Action, { scope: actions[action as Action].scope, id: request.on }, role) }));
  const allowed = answers.find(({ answer }) => answer.allowed);
  if (allowed) {
    if (kind === 'decided') sameVersion(work, request.version);
    return allowed.role;
  }
  const best = answers.find(({ answer }) => !answer.allowed && !answer.because.includes('NOT_YOUR_ROLE'));
  if (!best || best.answer.allowed) throw new StepError('NOT_YOUR_ROLE');
  // What a device reports as having happened has happened: it is stored, and what was missing shows as a hold.
  const known = request.on in { ...work.evaluation.visits, ...work.evaluation.studies, [work.order.id]: true };
  if (kind === 'witnessed' && request.at && known) return best.role;
  // A centre may amend its reading after the letter: what it says is stored, and held for a vet to look at.
  if (action === 'enterResult' && known) return best.role;
  // What somebody else has done in the meantime is the better answer than that it can no longer be done.
  if (kind === 'decided' && request.version !== undefined) sameVersion(work, request.version);
  throw refusal(work, best.answer.because);
}

function rolesFor(actor: Actor, action: ActionName, input: unknown): Role[] {
  if (!writesOwnersWord(action, actor.roles)) return actor.roles;
  return [(input as { signerRole?: 'owner' | 'agent' }).signerRole ?? 'owner'];
}

/** Nobody decides upon these: what the program says of its own mail, and the readings of a sleeping dog, which come every few minutes, and points on a film. */
const BESIDE_THE_POINT: ReadonlySet<string> = new Set(['sendOutcome', 'letterOutcome', 'chaseSent', 'readingTaken', 'filmMarked'] satisfies FactType[]);

function sameVersion(work: Work, version: number | undefined): void {
  const changed = work.order.facts.slice(version ?? 0).filter((f) => !BESIDE_THE_POINT.has(f.type)).map((f) => ({ type: f.type, at: f.rec, by: f.byName }));
  if (changed.length === 0 && version !== undefined && version <= work.order.version) return;
  throw new StepError('CHANGED_MEANWHILE', undefined, { changed });
}

function refusal(work: Work, codes: string[]): StepError {
  if (codes.includes('NOT_AT_THIS_STEP')) return new StepError('NOT_AT_THIS_STEP');
  const all: Hold[] = [work.evaluation.order, ...Object.values(work.evaluation.visits), ...Object.values(work.evaluation.studies)].flatMap((s) => s.holds);
  const because = codes.map((code) => {
    const hold = all.find((h) => h.code === code);
    return { code, words: hold ? holdSentence(hold, { t }) : code };
  });
  return new StepError('HELD', because.map((b) => b.words).join(' '), { because });
}

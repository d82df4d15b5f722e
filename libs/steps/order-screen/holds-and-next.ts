import { isActionName } from '#libs/contracts/actions/all';
import type { NextAction, WordedHold } from '#libs/contracts/screens/order';
import { actions, type Action } from '#libs/pathway/actions';
import type { Evaluation, Standing } from '#libs/pathway/evaluation';
import { actionLabels, type Naming } from '#libs/pathway/words';
import { t } from '#libs/words/spoken';
import { writesOwnersWord } from '../consent/owners-word.js';
import { whereDone } from '../record/where-done.js';
import { roleWord } from './names.js';
import type { Viewer } from './screen-source.js';
import { titleAndRest } from './thread-screen.js';

export function mayDo(action: string, viewer: Viewer): boolean {
  const roles: readonly string[] = actions[action as Action]?.roles ?? [];
  return viewer.roles.some((r) => roles.includes(r)) || writesOwnersWord(action, viewer.roles);
}

type Scoped = { scope: 'order' | 'visit' | 'study'; id: string; standing: Standing<string> };

function scopes(e: Evaluation): Scoped[] {
  return [
    ...Object.values(e.visits).map((standing): Scoped => ({ scope: 'visit', id: standing.id, standing })),
    ...Object.values(e.studies).map((standing): Scoped => ({ scope: 'study', id: standing.id, standing })),
    { scope: 'order', id: e.order.id, standing: e.order },
  ];
}

/** Not offered again where the answer stands; a yes is taken back by an action of its own. */
const ANSWERED_BY: Partial<Record<Action, string[]>> = {
  consentSedation: ['CONSENT_SEDATION_MISSING', 'EMERGENCY_WISHES_MISSING'], consentStudy: ['CONSENT_STUDY_MISSING'], consentSendAll: ['CONSENT_SEND_ALL_MISSING'], acceptEstimate: ['ESTIMATE_NOT_ACCEPTED'],
};

export function nextActions(e: Evaluation, viewer: Viewer, home: string): NextAction[] {
  const here = (action: Action) => (whereDone(action, e, home) ?? viewer.practice) === viewer.practice;
  return scopes(e).flatMap(({ scope, id, standing }) => {
    const missing = new Set<string>(standing.holds.map((h) => h.code));
    const row = (action: Action, allowed: boolean, because: string[]): NextAction[] =>
      isActionName(action) && (ANSWERED_BY[action]?.some((code) => missing.has(code)) ?? true) && actions[action].scope === scope ? [{ action, label: t.known(actionLabels[action]), on: { scope, id }, allowed, yours: mayDo(action, viewer) && here(action), because }] : [];
    return [...standing.next.flatMap((a) => row(a, true, [])), ...Object.entries(standing.refused).flatMap(([a, because]) => row(a as Action, false, because ?? []))];
  });
}

/** Says why a button refuses, and waits for nobody. */
const ONLY_REFUSES: ReadonlySet<string> = new Set(['TOP_UP_NOT_SIGNED']);

export function wordedHolds(e: Evaluation, viewer: Viewer, naming: Naming, next: NextAction[]): WordedHold[] {
  const allowed = new Set(next.filter((n) => n.allowed && n.yours).map((n) => n.action));
  const seen = new Set<string>();
  return scopes(e).flatMap(({ standing }) => standing.holds).filter((h) => !ONLY_REFUSES.has(h.code)).flatMap((h) => {
    const once = `${h.code} ${h.on.id}`;
    if (seen.has(once)) return [];
    seen.add(once);
    const words = titleAndRest(h, naming);
    return [{ code: h.code, on: h.on, ...words, who: h.who.map(roleWord), by: h.by ?? null, until: h.until ?? null, forbids: h.forbids, ways: h.ways, yours: h.ways.some((w) => allowed.has(w)) }];
  });
}

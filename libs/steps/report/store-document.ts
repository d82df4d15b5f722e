import { createHash, randomUUID } from 'node:crypto';
import { addToOutbox } from '#libs/platform/database/outbox';
import type { Said } from '#libs/words/said';
import { wordsIn, type Sentence } from '#libs/words/words';
import type { Work } from '../record/work.js';

export type DocumentKind = 'letter' | 'certificate' | 'goingHome' | 'consentCopy' | 'referralLetter';

export interface Paper {
  kind: DocumentKind;
  /** The compiler knows that it can be said in every language. */
  named: Said<Sentence>;
  snapshot: { templateVersion: number };
  serial?: string;
  /** The study or visit it is about. */
  subject: string;
  forOwner: boolean;
}

export const hashOf = (snapshot: unknown): string => createHash('sha256').update(JSON.stringify(snapshot)).digest('hex');

/** Freezes what a paper is printed from; the worker prints it, and signs a certificate's code, after the commit. */
export async function storeDocument({ tx, order, now }: Work, paper: Paper, id: string = randomUUID()): Promise<string> {
  await tx.$executeRaw`INSERT INTO document (id, order_id, kind, name, named, template, snapshot, snapshot_hash, serial, for_owner, subject, at)
    VALUES (${id}::uuid, ${order.id}::uuid, ${paper.kind}, ${wordsIn('en').said(paper.named)}, ${JSON.stringify(paper.named)}::jsonb, ${`${paper.kind} ${paper.snapshot.templateVersion}`}, ${JSON.stringify(paper.snapshot)}::jsonb, ${hashOf(paper.snapshot)},
      ${paper.serial ?? null}, ${paper.forOwner}, ${paper.subject}, ${now})`;
  await addToOutbox(tx, 'print-document', { document: id }, { dedupe: id });
  return id;
}

import type { Readable } from 'node:stream';
import { Readable as Stream } from 'node:stream';
import type { FileStore } from '#libs/platform/files/file-store';
import { asJson, extensionOf, fileName, zipOf, type ZipEntry } from '#libs/platform/files/zip-of';
import type { Actor } from '../record/actor.js';
import type { StepDeps } from '../record/step-deps.js';
import { nameOfFile } from '../report/document-name.js';
import { printDocument } from '../report/print-document.js';
import { maskOthers, type Masking } from './others-names.js';
import { personSource, type OrderSource, type PersonSource } from './person-source.js';
import { addEvent, lockRequest, managerOnly, ofKind, todayAt, verifiedFirst } from './request-record.js';

/** Everything about one person as one zip: what is stored in words, the papers they may have, the films of their dogs. */
export async function exportPerson(deps: StepDeps & { files: FileStore }, actor: Actor, id: string): Promise<Readable> {
  managerOnly(actor);
  const { source, mask } = await deps.db.practice(actor.practice, async (tx) => {
    const request = await lockRequest(tx, deps, actor, id);
    verifiedFirst(request);
    ofKind(request, 'access', 'This request does not ask for access.');
    const { zone } = await todayAt(tx, actor.practice, deps.clock.now());
    const found = await personSource(tx, request.person.id, zone);
    await addEvent(tx, deps, actor, id, 'exported', `Zip made: ${found.orders.length} orders, ${found.mails.length} mails.`);
    return { source: found, mask: await maskOthers(tx, request.person.id, found.roles.map((r) => r.dog)) };
  });
  return zipOf(entriesOf(deps.files, source, mask), deps.clock.now());
}

function entriesOf(files: FileStore, source: PersonSource, mask: Masking): ZipEntry[] {
  const { person, roles, dogs, mails, seenBy, orders } = source;
  return [
    { name: 'about.txt', content: Buffer.from(ABOUT) },
    { name: 'person.json', content: asJson({ person, roles }) },
    { name: 'dogs.json', content: asJson(mask(dogs)) },
    { name: 'mails.json', content: asJson(mask(mails)) },
    { name: 'who-looked.json', content: asJson(seenBy) },
    ...orders.flatMap((order) => orderEntries(files, order, mask)),
  ];
}

function orderEntries(files: FileStore, { accession, facts, papers, films }: OrderSource, mask: Masking): ZipEntry[] {
  const folder = `order-${fileName(accession)}`;
  return [
    { name: `${folder}/record.json`, content: asJson(mask(facts)) },
    ...papers.map((p, i) => ({ name: `${folder}/papers/${String(i + 1).padStart(2, '0')} ${fileName(nameOfFile(p))}.pdf`, content: () => (p.pdfSha ? files.read(p.pdfSha) : printDocument(p.kind, p.snapshot).then((bytes) => Stream.from([bytes]))) })),
    ...films.map((f, i) => ({ name: `${folder}/films/${String(i + 1).padStart(2, '0')} ${fileName(f.view)}.${extensionOf(f.kind)}`, content: () => files.read(f.sha) })),
  ];
}

const ABOUT = `Everything that this practice keeps about you.

person.json      your name, the ways to reach you, and your dogs with the time in which you were somebody to them
dogs.json        your dogs
mails.json       what was mailed to you, and when
who-looked.json  when somebody looked at or changed what is kept, in which role
order-…/         each order: everything that was written down, papers made for you, films

Other private people are written as "another person". Of a dog that changed hands you get the time in which it was yours.
manifest.json lists the files with their SHA-256.
`;

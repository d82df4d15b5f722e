import { randomUUID } from 'node:crypto';
import { newToken } from '#libs/platform/passwords/token';
import type { PracticeKey } from '#seed/practices';
import { Visitor } from '../access-support/visitor.js';
import type { Copy } from './copies.js';
import type { Ground } from './ground.js';
import type { Staff } from './cells.js';
import { first, type State } from './states.js';

const COOKIE = '__Host-cotyla';

/** Whoever a question wants: somebody with just these roles, an owner or a reader behind a link; signed in. */
export class People {
  readonly #staff = new Map<string, Promise<Visitor>>();
  constructor(private readonly ground: Ground) {}

  with(roles: readonly Staff[], practice: PracticeKey): Promise<Visitor> {
    const name = `${practice} ${roles.join(' ')}`;
    const known = this.#staff.get(name) ?? this.#hire(roles, practice);
    this.#staff.set(name, known);
    return known;
  }

  async owner(copy: Copy, { road }: State): Promise<Visitor> {
    return this.#behindLink('owner', { order_id: copy.order, person_id: copy.of(road.dog.person.id) }, road.house.id);
  }

  async reader(copy: Copy, { road }: State, sealed: string): Promise<Visitor> {
    return this.#behindLink('reader', { order_id: copy.order, package_id: copy.of(sealed), centre_id: road.evaluation.studies[first(road)]!.centre }, road.house.id);
  }

  async #behindLink(kind: 'owner' | 'reader', to: object, practice: string): Promise<Visitor> {
    const link = randomUUID();
    await this.#insert('link', { id: link, token_hash: newToken().hash, kind, practice_id: practice, created_at: new Date(), expires_at: SOON, ...to });
    return this.#open(`the ${kind}`, { kind: `${kind}Link`, link_id: link });
  }

  async #hire(roles: readonly Staff[], practice: PracticeKey): Promise<Visitor> {
    const id = randomUUID();
    await this.#insert('staff', { id, scheme_id: await this.#scheme(), practice_id: this.ground.driver.scheme.houses[practice].id, name: roles.join(' and ') || 'nobody', email: `${id}@x.example`, password_hash: '', roles, active: true });
    return this.#open(roles.join(' and '), { kind: 'staff', staff_id: id });
  }

  async #scheme(): Promise<string> {
    return (await this.ground.owner.query<{ id: string }>('SELECT id FROM scheme')).rows[0]!.id;
  }

  async #open(name: string, to: object): Promise<Visitor> {
    const [{ token, hash }, csrf] = [newToken(), newToken().token];
    await this.#insert('session', { token_hash: hash, csrf, created_at: new Date(), expires_at: SOON, ...to });
    return new Visitor(name, this.ground.url, `${COOKIE}=${token}`, csrf);
  }

  async #insert(table: string, row: object): Promise<void> {
    await this.ground.owner.query(`INSERT INTO ${table} SELECT * FROM jsonb_populate_record(null::${table}, $1)`, [JSON.stringify(row)]);
  }
}

const SOON = new Date(Date.now() + 3_600_000);

import { Controller, Sse, type MessageEvent, type OnModuleDestroy } from '@nestjs/common';
import { map, merge, Observable, Subject, takeUntil, timer } from 'rxjs';
import type { Change } from '#libs/platform/database/order-changes';
import { Deps } from '../deps.js';
import { For, Who } from '../session/guard.js';
import type { Principal } from '../session/principal.js';

/** Something is written now and then, so that nothing in between takes the line for dead. */
const BREATH_MS = 25_000;
/** The browser opens the line again by itself, and is asked who it is: a session that ended hears nothing for long. */
const LONGEST_MS = 10 * 60_000;

@Controller('api')
export class LiveController implements OnModuleDestroy {
  readonly #ending = new Subject<void>();

  constructor(private readonly deps: Deps) {}

  /** Which orders changed, by number alone, to whoever may see them; and to a practice, that its tray of images did. */
  @Sse('live') @For('staff', 'ownerLink', 'reader')
  live(@Who() who: Principal): Observable<MessageEvent> {
    const changes = new Observable<MessageEvent>((line) => this.deps.db.changes.listen((change) => {
      if (concerns(who, change)) line.next(told(change));
    }));
    const breath = timer(0, BREATH_MS).pipe(map((): MessageEvent => ({ type: 'breath', data: '' })));
    return merge(changes, breath).pipe(takeUntil(merge(this.#ending, timer(LONGEST_MS))));
  }

  /** A server that stops does not wait for open pages; they find the next one by themselves. */
  onModuleDestroy(): void {
    this.#ending.next();
  }
}

function concerns({ kind, practice, centre, order }: Principal, change: Change): boolean {
  if (change === 'missed') return true;
  if ('tray' in change) return kind === 'staff' && practice === change.tray;
  return kind === 'ownerLink' ? order === change.order : kind === 'staff' ? change.practices.includes(practice!) : change.centres.includes(centre!);
}

function told(change: Change): MessageEvent {
  if (change === 'missed') return { type: 'missed', data: '' };
  return 'tray' in change ? { type: 'tray', data: '' } : { type: 'order', data: { order: change.order } };
}

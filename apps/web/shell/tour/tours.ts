import type { Me } from '#libs/contracts/session';
import type { PageSentence } from '#libs/words/de/staff/page-words';

/** Sentences, said where they are shown. */
export interface Stop { words: PageSentence; to?: string; link?: PageSentence }

const desk: Stop[] = [
  { words: 'Today shows each visit as a line with knots. A ring is a dog that is here; beside a gap stands what is missing and who can supply it.', to: '/', link: 'Today' },
  { words: 'Press / and type a transponder number, a dog’s or owner’s name, a phone or order number: the answer to “where is my dog’s result?” is one line.' },
  { words: 'B books a visit. Everything can be typed; a number chooses a time, a letter answers a question, Ctrl and Enter book.', to: '/book', link: 'Book a visit' },
  { words: 'The calendar shows rooms and people. Drag a visit, or choose it and say where to.', to: '/calendar', link: 'Calendar' },
  { words: 'What nobody answers comes up under Also waits, with the day on which it is due.' },
];
const room: Stop[] = [
  { words: 'Today shows who is here and what each dog waits for. A bar at the start of a row means that it waits for you.', to: '/', link: 'Today' },
  { words: 'On an order, the first button under What it waits for is the next thing to do. It never greys out: pressed too early, it says what is missing.' },
  { words: 'While a dog sleeps, Beside the dog is made for a tablet: big keys, readings as small curves. Without a network entries wait on the tablet and go by themselves, in order.' },
  { words: 'Anybody may press Stop imaging, at any time and without a reason, also without network.' },
];
const manager: Stop[] = [
  { words: 'Under Practice are people and their accreditation, rooms, devices and their checks, prices, centres and the texts that owners sign.', to: '/practice', link: 'Practice' },
  { words: 'What runs out before a booked day is found each night, and the order says so with its ways out.' },
  { words: 'Requests of people about their own data have a clock and their own page.', to: '/requests', link: 'Data requests' },
];
const reader: Stop[] = [
  { words: 'Packages are listed by the day they are due. You read blind: no owner, no practice, no earlier reading.', to: '/reader', link: 'Packages' },
  { words: 'Numbers 1 to 9 change the film. Each joint needs a value, or a reason why there is none.' },
  { words: 'Films that cannot be read are sent back with the view and the reason, so that the dog is asked back only once.' },
];
const lead: Stop[] = [
  { words: 'The scheme’s page counts where the studies stand. Each number opens the list behind it.', to: '/scheme', link: 'Scheme' },
  { words: 'Times and readers shows how long results take with the open ones in, and what lies beyond chance. There is no ranking.', to: '/scheme/readers', link: 'Times and readers' },
  { words: 'A breed’s figures are frozen once a year, so that a dog’s place on its paper does not drift.', to: '/scheme/breeds', link: 'Breeds' },
];

/** A few things to know first, by what a person does here; nobody is told twice. */
export function tourOf({ kind, roles }: Pick<Me, 'kind' | 'roles'>): Stop[] {
  const has = (...some: string[]) => roles.some((r) => some.includes(r));
  const stops = [
    ...(kind === 'reader' || has('reader') ? reader : []),
    ...(kind === 'lead' || has('lead') ? lead : []),
    ...(has('desk') ? desk : []),
    ...(has('nurse', 'vet', 'radiographer') ? room : []),
    ...(has('manager') ? manager : []),
  ];
  return stops.filter((stop, i) => stops.findIndex((s) => s.words === stop.words || (stop.to === '/' && s.to === '/')) === i);
}

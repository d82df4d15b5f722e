import { screen } from '../screen.js';
import { shared } from '../shared.js';
import { studies } from '../studies.js';
import { geometry } from './geometry.js';
import { pages } from './pages.js';

/** All that a page of somebody who signed in may say: its own words, those it shares with owners' pages, and the studies'. */
export const pageWords = { ...screen, ...shared, ...studies, ...geometry, ...pages } as const;

export type PageSentence = keyof typeof pageWords;

import type { Person } from '#libs/contracts/register';
import { dropNulls } from '../dog-of-row.js';

/** The columns of a person that people see. Expects the alias `p`. */
export const PERSON = `p.id, p.name, p.latin_name AS "latinName", p.email, p.phone, p.address, p.channel, p.language`;

/** Without the ways to reach a person that are not known. */
export const personOfRow = (row: Person): Person => dropNulls(row);

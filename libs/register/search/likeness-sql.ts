/** From this score on, a name is offered. Lower would bring in strangers, higher would refuse a short name with two letters swapped. */
export const NEAR = 0.35;

/** How near a column is to what was typed: over 1 when it holds it, else by shared runs of three letters. */
export const likeness = (column: string, typed: string): string =>
  `CASE WHEN strpos(lower(${column}), lower(${typed})) > 0 THEN 1 + similarity(${column}, ${typed}) ELSE greatest(similarity(${column}, ${typed}), word_similarity(${typed}, ${column})) END`;

/** Whether a phone number holds these digits, however it is grouped. */
export const phoneHas = (column: string, digits: string): string => `strpos(regexp_replace(coalesce(${column}, ''), '\\D', '', 'g'), ${digits}) > 0`;

/** From this score on, a name is offered. Lower would bring in strangers, higher would refuse a short name with two letters swapped. */
export const NEAR = 0.35;

/** Whether a phone number holds these digits, however it is grouped. */
export const phoneHas = (column: string, digits: string): string => `strpos(regexp_replace(coalesce(${column}, ''), '\\D', '', 'g'), ${digits}) > 0`;

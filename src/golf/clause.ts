/**
 * The clauses that a round by the Rules is held to here, by their numbers.
 * Source: R&A and USGA, Rules of Golf (2023); numbers and contents from memory, in our own words elsewhere.
 */
export const clauses = ['4.1a(2)', '4.1a(3)', '4.1b', '4.1c', '4.3a', '5.7', 'G-5'] as const;
export type Clause = (typeof clauses)[number];

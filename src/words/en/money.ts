/** What the site says of: money. */
export const money = {};

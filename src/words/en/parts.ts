/** What the site says of: parts. */
export const parts = {};

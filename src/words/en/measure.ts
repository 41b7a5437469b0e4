/** What the site says of: measure. */
export const measure = {};

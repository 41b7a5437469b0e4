/** What the site says of: marks. */
export const marks = {};

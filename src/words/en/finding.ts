/** What the site says of: finding. */
export const finding = {};

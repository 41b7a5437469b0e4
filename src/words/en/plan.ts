/** What the site says of: plan. */
export const plan = {};

/** What the site says of: photos. */
export const photos = {};

/** What the site says of: dossier. */
export const dossier = {};

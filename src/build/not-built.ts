/** Why a site was not built, in words for whoever asked for it. */
export class NotBuilt extends Error {}

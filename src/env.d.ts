declare namespace App {
  interface Locals {
    /** Set by an entry's page, so that components in its text know whose day it is. */
    readonly entry?: import('./book/types.ts').Entry;
    readonly view?: import('./book/types.ts').View;
    /** Attributes for the site's own words inside the entry, where it is in another language than they are. */
    readonly ours?: import('./words/own-language.ts').OwnLanguage;
  }
}

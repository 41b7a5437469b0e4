// Builds an Astro project in a process of its own.
import { build } from 'astro';

await build({ root: process.argv[2] ?? '', logLevel: 'error' });

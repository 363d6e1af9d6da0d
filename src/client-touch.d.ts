/** What `layouts/on-touch.js` adds to the tags of islands. */
import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    'client:touch'?: boolean;
  }
}

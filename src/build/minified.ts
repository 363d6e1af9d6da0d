/** A script that stands in every page, as short as what is fetched: without the comments and names that its source has. */
import { minifySync } from 'vite';

export function minified(name: string, source: string): string {
  const { code, errors } = minifySync(name, source);
  if (errors.length > 0) throw new Error(`${name} cannot be shortened: ${errors[0]!.message}`);
  return code;
}

/** Addresses inside the site, wherever it is hosted. */

/** @param path from the site's root, without a leading slash: `rules/wall-thickness/`. */
export const href = (path = ''): string => `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path}`;

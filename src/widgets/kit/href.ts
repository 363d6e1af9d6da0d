/** Addresses inside the site, wherever it is hosted: the one place that knows its base. */

/** @param path from the site's root, without a leading slash: `rules/wall-thickness/`; none is the root itself. */
export const href = (path = ''): string => `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path}`;

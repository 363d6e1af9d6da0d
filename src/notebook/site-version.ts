/** The version of this site, as the files that a reader keeps carry it: the one of package.json, which a test compares. */
export const siteVersion = '0.2.0';

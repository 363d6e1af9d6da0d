/**
 * Puts on a style sheet that comes with a part fetched late, or that depends on a choice. The page's policy refuses style that
 * is put into the page as text; a sheet that a script of the site makes is none.
 * @returns takes it off again
 */
export function addStyle(css: string): () => void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  document.adoptedStyleSheets.push(sheet);
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
  };
}

/**
 * A projector shows ink on paper best, so the wall is light whatever the device prefers, until its teacher wants it dark. The
 * colors stand in the style sheets, under the device's preference: these rules are switched, and given back.
 */
const wanted = /\(prefers-color-scheme: ?dark\)/;
let found: { readonly rule: CSSMediaRule; readonly media: string }[] | undefined;

function rules(): readonly { readonly rule: CSSMediaRule; readonly media: string }[] {
  found ??= [...document.styleSheets].flatMap((sheet) => {
    try {
      return [...sheet.cssRules].flatMap((rule) =>
        rule instanceof CSSMediaRule && wanted.test(rule.media.mediaText)
          ? [{ rule, media: rule.media.mediaText }]
          : [],
      );
    } catch {
      // A sheet of a browser's extension.
      return [];
    }
  });
  return found;
}

export function setScheme(scheme: 'light' | 'dark'): void {
  for (const { rule, media } of rules())
    rule.media.mediaText = scheme === 'dark' ? media.replace(wanted, 'screen') : 'not all';
  document.documentElement.style.colorScheme = scheme;
}

/** As the device prefers again. */
export function dropScheme(): void {
  for (const { rule, media } of found ?? []) rule.media.mediaText = media;
  found = undefined;
  document.documentElement.style.removeProperty('color-scheme');
}

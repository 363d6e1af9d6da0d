/** Failing at an author helpfully: which tag, what it got, which names exist. */

/** The entry with this name; stops the build with the list of names where there is none. */
export function oneOf<Value>(
  from: Readonly<Record<string, Value>>,
  name: string,
  tag: string,
  got: string,
): Value {
  const found = Object.hasOwn(from, name) ? from[name] : undefined;
  if (found === undefined)
    throw new Error(
      `<${tag}> got “${got}”, but there is no “${name}”. There are: ${Object.keys(from).join(', ')}.`,
    );
  return found;
}

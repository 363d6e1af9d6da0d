/** A reader's hand and eye at the site, in any engine. What is named must be seen; the first such place is taken. */
// biome-ignore-all lint/performance/useDomNodeTextContent: what is seen counts, in the reader’s units.
import type { Driver } from './driver.ts';
import { find, type Place, type SentPlace, sent } from './find.ts';
import { until } from './process.ts';

type Find = (place: SentPlace) => HTMLElement[];

export class Hand {
  readonly #driver: Driver;
  readonly #site: string;

  /** @param site address of the served site, with a slash at its end */
  constructor(driver: Driver, site: string) {
    this.#driver = driver;
    this.#site = site;
  }

  /** Runs a function in the page; it may use what it is given, and nothing else from outside. */
  async inPage<T, A extends readonly unknown[]>(
    look: (find: Find, ...given: A) => T,
    ...given: A
  ): Promise<T> {
    const values = given.map((value) => `, ${JSON.stringify(value)}`).join('');
    return (await this.#driver.evaluate(`(${look})(${find}${values})`)) as T;
  }

  async #awake() {
    await until('the page wakes up', async () => {
      const sleeps = await this.inPage(() =>
        Boolean(document.querySelector('astro-island[ssr]:not([client=visible], [client=touch])')),
      );
      return sleeps ? undefined : true;
    });
  }

  /** Goes to an address below the site's root, and waits until the page is awake. */
  async open(path: string) {
    await this.#driver.open(this.#site + path);
    await this.#awake();
  }

  async reload() {
    await this.#driver.reload();
    await this.#awake();
  }

  /** Presses the mouse on the middle of a place, as soon as nothing lies over it. */
  async click(place: Place) {
    const spot = await until(`nothing lies over ${JSON.stringify(sent(place))}`, () =>
      this.inPage((find, place) => {
        const [element] = find(place);
        if (!element || element.matches(':disabled')) return undefined;
        element.scrollIntoView({ block: 'center', behavior: 'instant' });
        const { x, y, width, height } = element.getBoundingClientRect();
        const spot = { x: x + width / 2, y: y + height / 2 };
        const there = document.elementFromPoint(spot.x, spot.y);
        // A label stands for its control.
        const control = there?.closest('label')?.control;
        return there && (element.contains(there) || control === element) ? spot : undefined;
      }, sent(place)).then((spot) => spot ?? undefined),
    );
    await this.#driver.clickAt(spot.x, spot.y);
  }

  /** Presses the mouse on the middle of what is only drawn, whatever takes the press there. */
  async clickOn(place: Place) {
    const spot = await until(JSON.stringify(sent(place)), () =>
      this.inPage((find, place) => {
        const box = find(place)[0]?.getBoundingClientRect();
        return box && { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      }, sent(place)).then((spot) => spot ?? undefined),
    );
    await this.#driver.clickAt(spot.x, spot.y);
  }

  /** Brings the focus to a place and presses keys. */
  async press(place: Place, ...keys: readonly string[]) {
    await until(`the focus on ${JSON.stringify(sent(place))}`, () =>
      this.inPage((find, place) => {
        const [element] = find(place);
        element?.focus();
        return element !== undefined && document.activeElement === element ? true : undefined;
      }, sent(place)).then((there) => there || undefined),
    );
    await this.#driver.keys(keys);
  }

  /** Writes into a field instead of what stands there, and goes on with keys. */
  async type(place: Place, text: string, ...keys: readonly string[]) {
    await this.click(place);
    await this.inPage(() => (document.activeElement as HTMLInputElement).select());
    await this.#driver.keys([...text, ...keys]);
  }

  /** The words seen at a place, spaces as one; nothing where there is no such place. */
  read(place: Place): Promise<string> {
    return this.inPage((find, place) => {
      const [element] = find(place);
      return (element?.innerText ?? element?.textContent ?? '').replace(/\s+/g, ' ').trim();
    }, sent(place));
  }

  /** What stands in a field. */
  value(place: Place): Promise<string | undefined> {
    return this.inPage((find, place) => (find(place)[0] as HTMLInputElement | undefined)?.value, sent(place));
  }

  attribute(place: Place, name: string): Promise<string | null | undefined> {
    return this.inPage((find, place, name) => find(place)[0]?.getAttribute(name), sent(place), name);
  }

  /** What is drawn at a place, as text that changes with it. */
  drawn(place: Place): Promise<string | undefined> {
    return this.inPage((find, place) => find(place)[0]?.innerHTML, sent(place));
  }

  count(place: Place): Promise<number> {
    return this.inPage((find, place) => find(place).length, sent(place));
  }
}

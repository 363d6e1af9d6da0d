/** What a browser must be able to do for the paths: little, so that three engines can do the same. */

/** Keys by their names in `KeyboardEvent.key`; any other single character is typed as it is. */
export const namedKeys = {
  Enter: '\uE007',
  Tab: '\uE004',
  Escape: '\uE00C',
  Home: '\uE011',
  End: '\uE010',
  ArrowLeft: '\uE012',
  ArrowUp: '\uE013',
  ArrowRight: '\uE014',
  ArrowDown: '\uE015',
} as const;

export interface Driver {
  /** Errors in the page, answers that are errors, and requests to other hosts, as they come. */
  readonly troubles: string[];
  /** Goes to an address and waits until the page is loaded. */
  open(url: string): Promise<void>;
  reload(): Promise<void>;
  /** The value of an expression in the page; what it throws is thrown here. */
  evaluate(expression: string): Promise<unknown>;
  /** A press of the mouse, px from the upper left corner of what is seen of the page. */
  clickAt(x: number, y: number): Promise<void>;
  /** Keys pressed and let go one after the other, wherever the focus is: names of keys, or characters. */
  keys(keys: readonly string[]): Promise<void>;
  /** Ends the browser. */
  end(): Promise<void>;
}

/** Size of the window where one can be asked for, px. */
export const windowSize = { width: 1280, height: 900 } as const;

/** Wall thickness and size. */

export {};

/** Groove margins. */

export {};

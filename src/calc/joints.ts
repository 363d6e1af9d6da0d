/** Joint spacing. */

export {};

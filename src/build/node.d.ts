/** The few functions of Node that the build and its tests call; nothing of Node reaches a page. */
declare module 'node:fs' {
  export function readFileSync(file: URL | string, encoding: 'utf8'): string;
  export function readdirSync(folder: URL | string): string[];
}
declare module 'node:zlib' {
  export function gzipSync(text: string): Uint8Array;
}

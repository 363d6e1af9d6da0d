/** What `src/build/woods-plugin.ts` serves. */
declare module 'virtual:woods' {
  const packed: import('./box/wood/packed-woods.ts').PackedWoods;
  export default packed;
}
declare module 'virtual:all-woods' {
  const packed: import('./box/wood/packed-woods.ts').PackedWoods;
  export default packed;
}

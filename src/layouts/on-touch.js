/**
 * `client:touch`: a part of the page that sleeps until the reader uses it; reading past it fetches nothing. What is done to
 * it before it is awake is held by `before-waking.js`.
 *
 * @type {import('astro').ClientDirective}
 */
export default (load, _options, island) => {
  const asks = ['focusin', 'click', 'input'];
  const wake = async () => {
    for (const ask of asks) island.removeEventListener(ask, wake);
    const hydrate = await load();
    await hydrate();
  };
  for (const ask of asks) island.addEventListener(ask, wake);
};

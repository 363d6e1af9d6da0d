/**
 * The way to the wall, on every page: an address that ends in `#wall=lid-august` shows this figure in projector view, one in
 * `#at=lid-august&set=…` finds it as it stood on a wall. What does it is fetched then.
 */
type Wall = typeof import('./wall.tsx');

let wall: Wall | undefined;

/** The wall follows the address. @returns nothing: it is left with the page */
export function openWall(): void {
  const look = async () => {
    const name = /[#&](?:wall|at)=([^&]*)/.exec(location.hash)?.[1];
    if (!name && !wall) return;
    try {
      wall ??= await import('./wall.tsx');
    } catch {
      const link = document.querySelector(`a[href="#wall=${name}"]`);
      if (link && !link.querySelector('[role]'))
        link.insertAdjacentHTML(
          'beforeend',
          ' <span role="status">could not be fetched: try again when there is a network</span>',
        );
      // So that the same link is a new address again.
      history.replaceState(null, '', location.pathname + location.search);
      return;
    }
    wall.follow();
  };
  addEventListener('hashchange', look);
  void look();
}

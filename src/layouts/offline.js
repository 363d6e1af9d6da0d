// Asks for the service worker, and offers a new version once one waits; see Offline.astro. BASE stands for the site's address.
if ('serviceWorker' in navigator)
  addEventListener('load', () => {
    const notice = document.getElementById('new-version');
    const offer = (registration) => {
      notice.hidden = !registration.waiting;
      notice.lastElementChild.onclick = async () => {
        // Each open page holds one share of this lock.
        const open = (await navigator.locks.query()).held.filter(({ name }) => name === 'open page').length;
        if (open > 1)
          notice.firstElementChild.textContent =
            'Close the other pages of this site first: they still use the version before.';
        else {
          navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
          registration.waiting?.postMessage({ type: 'SKIP_WAITING' });
        }
      };
    };
    (window.requestIdleCallback || setTimeout)(async () => {
      navigator.locks?.request('open page', { mode: 'shared' }, () => new Promise(() => {}));
      try {
        const registration = await navigator.serviceWorker.register(`${BASE}service-worker.js`, {
          scope: BASE,
        });
        // Without locks it cannot be said which pages are open: then a new version comes when all are closed.
        if (!navigator.locks) return;
        offer(registration);
        registration.addEventListener('updatefound', () =>
          registration.installing?.addEventListener('statechange', () => offer(registration)),
        );
      } catch {
        // Without it the site works all the same, as long as there is a network.
      }
    });
  });

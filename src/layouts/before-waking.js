// Input made before a part of the page is awake is kept here and given to it when it wakes. A part that cannot be
// fetched says so: first at its beginning, then beside the control that is used.
(() => {
  const held = new Map();
  const words = new Map();
  const tell = (control) => {
    const message = words.get(asleep(control));
    if (!message) return;
    const row = control.closest('.control');
    const field = control.closest('.stepper');
    if (field) field.after(message);
    else if (row) row.append(message);
    else (control.closest('label, p') || control).after(message);
  };
  /** A door to the question field works once the one in the header does. */
  const asleep = (target) =>
    target instanceof Element &&
    (target.matches('[data-ask]') ? document.querySelector('header [data-ask]') : target).closest(
      'astro-island[ssr]',
    );
  const hold = (event) => {
    const { target } = event;
    if (asleep(target) && /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName)) {
      held.set(target, { value: target.value, checked: target.checked });
      tell(target);
    }
  };
  const press = (event) => {
    // A link into the page itself would take the box out of the address.
    const button = event.target instanceof Element && event.target.closest('button, a[href^="#"]');
    if (button && asleep(button)) {
      event.preventDefault();
      held.set(button, { pressed: true });
      tell(button);
    }
  };
  addEventListener('input', hold, true);
  addEventListener('change', hold, true);
  addEventListener('click', press, true);
  addEventListener('submit', (event) => asleep(event.target) && event.preventDefault(), true);
  addEventListener('astro:hydration-error', ({ target: island }) => {
    if (words.has(island) || !island.querySelector('input, select, textarea, button')) return;
    const message = document.createElement('p');
    message.className = 'message';
    message.setAttribute('role', 'status');
    message.textContent =
      'This part of the page could not be fetched: nothing happens yet when you use it. Reload the page when there is a network.';
    words.set(island, message);
    island.prepend(message);
    for (const control of held.keys()) if (island.contains(control)) tell(control);
  });
  addEventListener(
    'astro:hydrate',
    ({ target }) => {
      // After the part has drawn itself and taken its place.
      setTimeout(() => {
        for (const [element, { value, checked, pressed }] of held) {
          if (!target.contains(element) && !element.matches('[data-ask]')) continue;
          held.delete(element);
          if (pressed) element.click();
          else if (element.type === 'radio' || element.type === 'checkbox') {
            // A click on what is checked already would tell nobody.
            element.checked = !checked;
            if (checked) element.click();
          } else {
            element.value = value;
            for (const name of ['input', 'change']) element.dispatchEvent(new Event(name, { bubbles: true }));
          }
        }
      }, 50);
    },
    true,
  );
})();

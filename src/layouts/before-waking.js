// Input made before a part of the page is awake is kept here and given to it when it wakes.
(() => {
  const held = new Map();
  const asleep = (target) => target instanceof Element && target.closest('astro-island[ssr]');
  const hold = (event) => {
    const { target } = event;
    if (asleep(target) && /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName))
      held.set(target, { value: target.value, checked: target.checked });
  };
  const press = (event) => {
    const button = event.target instanceof Element && event.target.closest('button');
    if (button && asleep(button)) {
      event.preventDefault();
      held.set(button, { pressed: true });
    }
  };
  addEventListener('input', hold, true);
  addEventListener('change', hold, true);
  addEventListener('click', press, true);
  addEventListener('submit', (event) => asleep(event.target) && event.preventDefault(), true);
  addEventListener(
    'astro:hydrate',
    ({ target }) => {
      // After the part has drawn itself and taken its place.
      setTimeout(() => {
        for (const [element, { value, checked, pressed }] of held) {
          if (!target.contains(element)) continue;
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

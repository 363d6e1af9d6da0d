/** That the paths find no trouble shows something only if trouble is found where there is some. */
import { expect, path } from './path.ts';

path(
  'errors in a page, files that are missing, and requests to other hosts are noticed',
  async ({ hand, driver }) => {
    await hand.open('404.html');
    await hand.inPage(() => {
      console.error('said on purpose');
      // The page's own code listens to presses and asks this: so it is that code which fails, not this function.
      Element.prototype.closest = () => {
        throw new Error('thrown on purpose');
      };
      document.body.click();
      const script = document.createElement('script');
      script.src = '/not-there.js';
      document.head.append(script);
    });
    await expect.poll(() => driver.troubles.join('\n')).toContain('said on purpose');
    await expect.poll(() => driver.troubles.join('\n')).toContain('thrown on purpose');
    await expect.poll(() => driver.troubles.join('\n')).toMatch(/404: .*not-there\.js/);
    // From a file of the site that has no policy, which would keep the request from being made.
    await driver.open(new URL('robots.txt', await hand.inPage(() => location.href)).href);
    await hand.inPage(() => {
      new Image().src = 'http://elsewhere.invalid/picture.png';
    });
    await expect.poll(() => driver.troubles.join('\n')).toMatch(/another host.*elsewhere\.invalid/);
    driver.troubles.length = 0;
  },
);

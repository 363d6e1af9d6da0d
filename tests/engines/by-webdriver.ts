/** A browser that speaks WebDriver: a session once begun, whatever carries its commands. */
import { type Driver, namedKeys } from './driver.ts';

/** The commands used here: the way of each after that of the session, and its name in Firefox's own protocol. */
export const commands = {
  navigate: ['/url', 'WebDriver:Navigate'],
  refresh: ['/refresh', 'WebDriver:Refresh'],
  execute: ['/execute/sync', 'WebDriver:ExecuteScript'],
  act: ['/actions', 'WebDriver:PerformActions'],
  resize: ['/window/rect', 'WebDriver:SetWindowRect'],
} as const;

/** Sends a command and gives the value it is answered with. @throws with what the browser said against it */
export type Send = (command: keyof typeof commands, parameters: object) => Promise<unknown>;

const keyOf = (key: string) => namedKeys[key as keyof typeof namedKeys] ?? key;

/**
 * @param troubles where those of its pages are noted
 * @param end ends the browser and what was started for it
 */
export function drivenByWebDriver(send: Send, troubles: string[], end: () => Promise<void>): Driver {
  return {
    troubles,
    open: async (url) => void (await send('navigate', { url })),
    reload: async () => void (await send('refresh', {})),
    evaluate: (expression) => send('execute', { script: `return (${expression})`, args: [] }),
    clickAt: async (x, y) => {
      await send('act', {
        actions: [
          {
            type: 'pointer',
            id: 'mouse',
            parameters: { pointerType: 'mouse' },
            actions: [
              { type: 'pointerMove', duration: 0, origin: 'viewport', x: Math.round(x), y: Math.round(y) },
              { type: 'pointerDown', button: 0 },
              { type: 'pointerUp', button: 0 },
            ],
          },
        ],
      });
    },
    keys: async (keys) => {
      await send('act', {
        actions: [
          {
            type: 'key',
            id: 'keyboard',
            actions: keys.flatMap((key) => [
              { type: 'keyDown', value: keyOf(key) },
              { type: 'keyUp', value: keyOf(key) },
            ]),
          },
        ],
      });
    },
    end,
  };
}

/** Programs that are started for a browser, and certainly ended. */
import { type ChildProcess, type SpawnOptions, spawn } from 'node:child_process';

/** Asks until there is an answer. @throws after a minute, with the last reason why there was none */
export async function until<T>(what: string, ask: () => Promise<T | undefined> | T | undefined): Promise<T> {
  let reason: unknown;
  for (const end = Date.now() + 60_000; Date.now() < end; ) {
    try {
      const answer = await ask();
      if (answer !== undefined) return answer;
    } catch (error) {
      reason = error;
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`${what}: not within a minute`, { cause: reason });
}

/** A program that ends with this one at the latest. */
export function started(program: string, args: readonly string[], options: SpawnOptions = {}): ChildProcess {
  const child = spawn(program, args, { stdio: 'ignore', ...options });
  process.once('exit', () => child.kill('SIGKILL'));
  return child;
}

/** Ends a program and waits until it is gone. */
export async function ended(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill();
  const force = setTimeout(() => child.kill('SIGKILL'), 5000);
  await gone;
  clearTimeout(force);
}

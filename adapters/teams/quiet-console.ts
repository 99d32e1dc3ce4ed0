import { AsyncLocalStorage } from "node:async_hooks";

/** Set while a request is being authenticated. */
const quiet = new AsyncLocalStorage<true>();
let doorsOpen = 0;
let speak: typeof console.error | undefined;

/**
 * The library prints the signing key and the error of every refused token. While a door is open, what is printed inside
 * of `quietly` is dropped, and everything else is printed as ever.
 * @returns what to call when the door closes
 */
export function holdConsole(): () => void {
  doorsOpen++;
  if (speak === undefined) {
    const printed = console.error;
    speak = printed;
    console.error = (...parts: readonly unknown[]) => {
      if (quiet.getStore() === undefined) printed.apply(console, [...parts]);
    };
  }
  return releaseConsole;
}

/** Runs this without a word on the console. */
export function quietly<T>(work: () => Promise<T>): Promise<T> {
  return quiet.run(true, work);
}

function releaseConsole(): void {
  doorsOpen--;
  if (doorsOpen > 0 || speak === undefined) return;
  console.error = speak;
  speak = undefined;
}

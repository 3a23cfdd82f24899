import type { BrowserWindowConstructorOptions } from "electron";

/** Scheme the window's own pages come from; nothing else may be shown in it. */
export const ownScheme = "strandwright";
export const ownOrigin = `${ownScheme}://window`;

/**
 * The window as it is made: no Node in the page, its own world, its own sandbox.
 *
 * @param preload  path of the bundled bridge
 */
export function windowOptions(preload: string): BrowserWindowConstructorOptions {
  return {
    width: 1440,
    height: 900,
    show: false,
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
      spellcheck: false,
    },
  };
}

/** Whether a page may go there: only inside our own pages. */
export function mayNavigate(address: string): boolean {
  return address === ownOrigin || address.startsWith(`${ownOrigin}/`);
}

/** Whether a call comes from a page of ours. */
export function trustedSender(frame: { readonly url: string } | null): boolean {
  return frame !== null && mayNavigate(frame.url);
}

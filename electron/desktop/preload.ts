import { contextBridge, ipcRenderer, webUtils } from "electron";

function listen(channel: string, listener: (word: unknown) => void): () => void {
  const tell = (_event: unknown, word: unknown): void => listener(word);
  ipcRenderer.on(channel, tell);
  return () => void ipcRenderer.off(channel, tell);
}

/** The way to the host: one way to ask, one way to be told. */
contextBridge.exposeInMainWorld("strandwrightHost", {
  call: (method: string, body: unknown): Promise<unknown> => ipcRenderer.invoke("call", method, body),
  on: (listener: (event: unknown) => void): (() => void) => listen("event", listener),
});

/** The way to the desktop: the window's actions for its menu, what the menu asks for, a dropped file, and a drawing set to be shown. */
contextBridge.exposeInMainWorld("strandwrightDesktop", {
  offerActions: (actions: unknown): void => ipcRenderer.send("actions", actions),
  onPerform: (listener: (id: unknown) => void): (() => void) => listen("perform", listener),
  openDropped: (file: File): void => ipcRenderer.send("open-dropped", webUtils.getPathForFile(file)),
  showDrawn: (drawn: unknown): Promise<unknown> => ipcRenderer.invoke("show-drawn", drawn),
});

import { contextBridge, ipcRenderer } from "electron";

/** The whole bridge: one way to ask, one way to be told. */
contextBridge.exposeInMainWorld("strandwrightHost", {
  call: (method: string, body: unknown): Promise<unknown> => ipcRenderer.invoke("call", method, body),
  on(listener: (event: unknown) => void): () => void {
    const tell = (_event: unknown, word: unknown): void => listener(word);
    ipcRenderer.on("event", tell);
    return () => void ipcRenderer.off("event", tell);
  },
});

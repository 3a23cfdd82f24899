import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

export default defineConfig({
  root: decodeURI(new URL(".", import.meta.url).pathname),
  base: "./",
  plugins: [react()],
  build: {
    outDir: "../.build/renderer",
    emptyOutDir: true,
    target: "es2023",
    // fonts stay files: the page's content policy takes nothing from data addresses
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // the page comes from this machine: one file of it is as quick as several
    chunkSizeWarningLimit: 4000,
  },
});

import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

/** The screens. Built with root `renderer` (see electron/start-up/build.mjs) into dist/renderer. */
export default defineConfig({
  root: "renderer",
  // Relative, so that the same files work below http://127.0.0.1 and app://.
  base: "./",
  plugins: [react()],
  // The page policy allows no inline scripts and no workers from elsewhere.
  build: {
    outDir: "../dist/renderer", emptyOutDir: true, target: "es2022", assetsInlineLimit: 0, chunkSizeWarningLimit: 2000,
    // The screens need the chapters from the exports' door, not the document writers behind it.
    rolldownOptions: { treeshake: { moduleSideEffects: [{ test: /\/shared\/exports\/|\/node_modules\/(pdf-lib|@cantoo\/fontkit|docx)\//, sideEffects: false }] } },
  },
  worker: { format: "es" },
});
